using Advance.Paper;
using Advance.Paper.Pictures;
using Advance.Paper.Pictures.Placing;
using Advance.Paper.Setting;
using Advance.Paper.Tree;
using CsCheck;

namespace Advance.Tests.Paper.Pictures.Placing;

/// <summary>Labels, whatever they name: checked with plain geometry of our own, in 0.1 mm of the paper.</summary>
public sealed class LabelPlacingTests
{
    // Drawn 1 : 1 on a large paper, so that the scale stays and places can be compared.
    private const int Wide = 3_000_000;

    private static readonly Gen<Symbol> AnySymbol =
        from x in Gen.Int[0, 4000]
        from y in Gen.Int[0, 3000]
        from size in Gen.Int[20, 250]
        from turn in Gen.Int[0, 90]
        from isRound in Gen.Bool
        from words in Gen.Char['a', 'z'].Array[2, 12]
        select new Symbol(
            $"{x}/{y}/{size}",
            [isRound ? new Circle(new Point(x / 10.0, y / 10.0), size / 20.0) : new Rectangle(new Point(x / 10.0, y / 10.0), size / 10.0, size / 20.0, turn)])
        {
            Label = new Label([new LabelLine(new string(words)), new LabelLine("quiet", TextStyle.Quiet)]),
        };

    private static readonly Gen<Scene> AnyScene = AnySymbol.Array[1, 60].Select(s => SceneOf([.. s.DistinctBy(t => t.Id)]));

    [Fact]
    public void No_two_labels_meet() => AnyScene.Sample(
        scene =>
        {
            var labels = Place(scene).Labels.Where(l => !l.Box.IsEmpty).ToList();
            for (var i = 0; i < labels.Count; i++)
            {
                for (var j = 0; j < i; j++)
                {
                    Assert.False(labels[i].Box.Meets(labels[j].Box), $"{labels[i].Id} and {labels[j].Id}");
                }
            }
        },
        iter: 60);

    [Fact]
    public void No_label_stands_on_a_symbol_but_in_its_own() => AnyScene.Sample(
        scene =>
        {
            var set = Place(scene);
            foreach (var label in set.Labels.Where(l => !l.Box.IsEmpty))
            {
                foreach (var symbol in scene.Layers[0].Shapes.Cast<Symbol>())
                {
                    if (symbol.Id != label.Id || !label.IsInside)
                    {
                        Assert.False(Covers(symbol.Shapes[0], label.Box, set.Frame), $"{label.Id} on {symbol.Id}");
                    }
                }
            }
        },
        iter: 60);

    [Fact]
    public void Leaders_cross_neither_each_other_nor_a_foreign_label() => AnyScene.Sample(
        scene =>
        {
            var labels = Place(scene).Labels;
            foreach (var one in labels)
            {
                foreach (var other in labels)
                {
                    if (one.Leader is { } leader && other.Id != one.Id)
                    {
                        Assert.False(other.Leader is { } second && leader.Crosses(second), $"{one.Id} and {other.Id}");
                        Assert.False(leader.Meets(other.Box), $"{one.Id} through {other.Id}");
                    }
                }
            }
        },
        iter: 60);

    [Fact]
    public void Each_symbol_is_named_once() => AnyScene.Sample(
        scene => Assert.Equal(
            scene.Layers[0].Shapes.Cast<Symbol>().Select(s => s.Id).Order(StringComparer.Ordinal),
            Place(scene).Labels.Select(l => l.Id).Order(StringComparer.Ordinal)),
        iter: 30);

    [Fact]
    public void The_order_of_input_does_not_matter() => Gen.Select(AnyScene, Gen.Int).Sample(
        (scene, seed) =>
        {
            var shapes = scene.Layers[0].Shapes.ToArray();
            new Random(seed).Shuffle(shapes);
            Assert.Equal(Told(Place(scene)), Told(Place(SceneOf(shapes))));
        },
        iter: 40);

    [Fact]
    public void Moving_the_whole_moves_all() => Gen.Select(AnyScene, Gen.Int[-5000, 5000], Gen.Int[-5000, 5000]).Sample(
        (scene, dx, dy) => Assert.Equal(Told(Place(scene)), Told(Place(SceneOf([.. scene.Layers[0].Shapes.Select(s => Moved((Symbol)s, dx, dy))])))),
        iter: 40);

    [Fact]
    public void A_thing_far_away_moves_no_label_that_stands_beside_its_symbol() => AnyScene.Sample(
        scene =>
        {
            var far = new Symbol("far", [new Circle(new Point(700, 500), 5)]) { Label = new Label([new LabelLine("far")]) };
            var before = Place(scene).Labels;
            var after = Place(SceneOf([.. scene.Layers[0].Shapes, far])).Labels.ToDictionary(l => l.Id);
            foreach (var label in before.Where(l => l.Leader is null && l.Number == 0))
            {
                Assert.Equal(label.Box, after[label.Id].Box);
            }
        },
        iter: 40);

    [Fact]
    public void A_thing_far_away_moves_no_label_at_all_where_the_picture_stays_as_large() => AnyScene.Sample(
        scene =>
        {
            var frame = new Layer("frame", [new Rectangle(new Point(400, 300), 1000, 800)]);
            var far = new Symbol("far", [new Circle(new Point(880, 680), 5)]) { Label = new Label([new LabelLine("far")]) };
            var before = Told(Place(scene with { Layers = [frame, scene.Layers[0]] }));
            var after = Told(Place(scene with { Layers = [frame, new Layer("things", [.. scene.Layers[0].Shapes, far])] }));
            Assert.Equal(before, after.Where(label => !label.StartsWith("far ", StringComparison.Ordinal)));
        },
        iter: 40);

    [Fact]
    public void Ten_labels_on_one_spot_all_find_a_place()
    {
        var symbols = Enumerable.Range(0, 10).Select(i => new Symbol($"s{i}", [new Circle(new Point(50, 50), 1 + (i * 0.01))]) { Label = new Label([new LabelLine($"wedge {i}")]) });
        var labels = Place(SceneOf([.. symbols])).Labels;
        Assert.All(labels, l => Assert.False(l.Box.IsEmpty));
        Assert.All(labels, l => Assert.Equal(0, l.Number));
    }

    [Fact]
    public void A_lone_label_stands_under_its_symbol_or_in_it_where_it_fits()
    {
        Assert.True(Place(SceneOf([Named("large", 40)])).Labels.Single().IsInside);
        var label = Place(SceneOf([Named("small", 2)])).Labels.Single();
        Assert.Null(label.Leader);
        Assert.True(label.Box.Top >= 30);
    }

    [Fact]
    public void A_higher_rank_chooses_first()
    {
        Symbol At(string id, int rank) => new(id, [new Circle(new Point(0, id == "a" ? 0 : 0.1), 2)]) { Label = new Label([new LabelLine(id)]) { Rank = rank } };
        var first = Place(SceneOf([At("a", 0), At("b", 5)])).Labels;
        Assert.Equal("b", first[0].Id);
    }

    [Fact]
    public void A_name_in_a_black_symbol_stands_outside()
    {
        var black = new Symbol("b", [new Rectangle(new Point(0, 0), 60, 40) { Fill = Fill.Black }]) { Label = new Label([new LabelLine("b")]) };
        Assert.False(Place(SceneOf([black])).Labels.Single().IsInside);
    }

    [Fact]
    public void What_finds_no_room_is_listed_by_number_and_told()
    {
        // A label much longer than the paper cannot be led to a margin of it.
        var faults = new Faults();
        var set = Place(SceneOf([.. Enumerable.Range(0, 14).SelectMany(x => Enumerable.Range(0, 14).Select(y => new Symbol($"{x:00}{y:00}", [new Rectangle(new Point(x * 12, y * 12), 10, 10)]) { Label = new Label([new LabelLine($"a rather long name {x} {y}")]) { MayStandInside = false } }))]), faults);
        Assert.Contains(set.Labels, l => l.Number > 0);
        Assert.Equal(FaultKind.LabelsInKey, Assert.Single(faults.All).Kind);
        Assert.Equal(Enumerable.Range(1, set.Labels.Count(l => l.Number > 0)), set.Labels.Where(l => l.Number > 0).Select(l => l.Number));
    }

    private static Symbol Named(string id, double size) => new(id, [new Rectangle(new Point(0, 0), size, size)]) { Label = new Label([new LabelLine("name")]) };

    private static Scene SceneOf(IReadOnlyList<Shape> shapes) =>
        new("t", [new Layer("things", shapes)]) { Scaling = Scaling.Diagram };

    private static SetPicture Place(Scene scene, Faults? faults = null)
    {
        faults ??= new Faults();
        using var shaper = new Shaper(FaceSet.Of([], faults), faults);
        var composer = new Composer(shaper, TypeScale.For(TypeClass.Desk), new Targets([], faults));
        return new PictureSetter(composer, faults, "at A4", new KnownPictures()).Set(scene, Wide, Wide)!;
    }

    /// <summary>Labels with their places from the corner of the scene.</summary>
    private static List<string> Told(SetPicture set) => [.. set.Labels.Select(l => $"{l.Id} {l.Box} {l.Leader} {l.Number}")];

    private static Symbol Moved(Symbol symbol, int dx, int dy)
    {
        Point At(Point p) => new(((p.X * 10) + dx) / 10, ((p.Y * 10) + dy) / 10);
        return symbol with { Shapes = [symbol.Shapes[0] switch { Circle c => c with { Middle = At(c.Middle) }, Rectangle r => r with { Middle = At(r.Middle) }, var s => s }] };
    }

    /// <summary>True when a shape reaches more than 0.2 mm into a box; tried on points inside of the box.</summary>
    private static bool Covers(Shape shape, Box box, Frame frame)
    {
        for (var x = box.Left + 2; x <= box.Right - 2; x += 4)
        {
            for (var y = box.Top + 2; y <= box.Bottom - 2; y += 4)
            {
                if (Holds(shape, (x / 10.0 / frame.Scale) + frame.Left, (y / 10.0 / frame.Scale) + frame.Top))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool Holds(Shape shape, double x, double y)
    {
        if (shape is Circle circle)
        {
            return Math.Sqrt(Math.Pow(x - circle.Middle.X, 2) + Math.Pow(y - circle.Middle.Y, 2)) < circle.Radius - 0.3;
        }

        var r = (Rectangle)shape;
        var (sin, cos) = Math.SinCos(-r.Turn * Math.PI / 180);
        double dx = x - r.Middle.X, dy = y - r.Middle.Y;
        return Math.Abs((dx * cos) - (dy * sin)) < (r.Width / 2) - 0.2 && Math.Abs((dx * sin) + (dy * cos)) < (r.Height / 2) - 0.2;
    }
}
