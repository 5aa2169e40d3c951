using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Examples;

internal static class StagePlot
{
    private const double Width = 8000;
    private const double Depth = 5000;

    public static Sheet Sheet { get; } = new(
        "stage-plot",
        "Stage plot",
        new SheetSetup(Orientation: Orientation.Landscape),
        HarvestSupper.Head("Stage plot", "for everybody · The Threshers, five people, sets 20:00 and 21:15"),
        HarvestSupper.Foot("drawn from the gig, to scale"),
        [new Picture(Scene(), []), new Paragraph([Strong("1–22"), Quiet(" input channel, as on the input list · keys hear mix 5–6 on own in-ears · heights: deck 0.6 m above floor, no rails, two steps USL")])]);

    public static Scene Scene() => new(
        "The stage from above: drums in the middle, amplifiers at both sides, four wedges at the edge",
        [
            new Layer("grid", [.. Grid(), .. Figures()]),
            new Layer("deck", [new Rectangle(new Point(0, Depth / 2), Width, Depth) { Pen = Pen.Heavy }]) { KeepsLabelsOff = true },
            new Layer("words", [.. Words()]),
            new Layer("things", [.. Things()]),
            new Layer("wedges", [Wedge("w1", 1350, 1550, 100, "1"), Wedge("w2", -2600, 4250, 0, "2"), Wedge("w3", 0, 4250, 0, "3"), Wedge("w4", 2300, 4250, 0, "4")]),
        ]);

    private static IEnumerable<Shape> Grid()
    {
        for (var x = -3000; x <= 3000; x += 1000)
        {
            yield return new Line(new Point(x, 0), new Point(x, Depth)) { Pen = Pen.Hair };
        }

        for (var y = 1000; y < Depth; y += 1000)
        {
            yield return new Line(new Point(-4000, y), new Point(4000, y)) { Pen = Pen.Hair };
        }

        yield return new Line(new Point(0, 0), new Point(0, Depth + 500)) { Pen = new Pen(LineWeight.Thin, Dash.Centre) };
    }

    private static IEnumerable<Shape> Figures()
    {
        for (var x = -4; x <= 4; x++)
        {
            if (x != 0)
            {
                yield return new Lettering(new Point(x * 1000, Depth + 160), $"{Math.Abs(x)}");
            }
        }

        for (var y = 1; y <= 5; y++)
        {
            yield return new Lettering(new Point(-4120, Depth - (y * 1000)), $"{y}");
        }
    }

    private static IEnumerable<Shape> Words()
    {
        yield return new Lettering(new Point(-5300, 2350), "SR", TextStyle.Strong) { HeightMm = 10 };
        yield return new Lettering(new Point(5300, 2350), "SL", TextStyle.Strong) { HeightMm = 10 };
        yield return new Lettering(new Point(0, Depth + 900), "audience") { HeightMm = 3, Spread = 0.6 };
    }

    private static IEnumerable<Shape> Things()
    {
        yield return new Symbol("riser", [new Rectangle(new Point(0, 1100), 2000, 2000) { Pen = new Pen(LineWeight.Thin, Dash.Dashed) }])
        {
            IsArea = true,
            Label = Name("Drums", "1–7"),
        };
        foreach (var (x, y, r, id) in new[] { (-420, 650, 150, "tom-1"), (450, 700, 150, "tom-2"), (-700, 1300, 170, "floor"), (720, 1300, 200, "snare"), (0, 1550, 260, "kick") })
        {
            yield return new Symbol(id, [new Circle(new Point(x, y), r)]);
        }

        yield return Thing("sb1", -3550, 450, 600, 500, Name("SB1", "in 22, out 8"));
        yield return Thing("pd1", 3500, 250, 500, 400, new Label([new LabelLine("PD1")]));
        yield return Thing("bass", -1900, 1300, 600, 500, Name("Bass amp", "8, line only"));
        yield return Thing("gtr", -2900, 2450, 500, 400, Name("Gtr amp", "9"));
        yield return Thing("keys", 2300, 1800, 1300, 400, Name("Keys", "10–11"));
        foreach (var (id, x, y, name, channels) in new[] { ("fiddle", -2600, 3550, "Fiddle, Vox", "12 · 14"), ("ac", 0, 3550, "Ac Gtr, Lead Vox", "13 · 15"), ("vox", 2300, 3250, "Vox", "16") })
        {
            yield return new Symbol(id, [new Circle(new Point(x, y), 60)]) { Label = Name(name, channels) };
        }

        foreach (var (id, x, y) in new[] { ("PD1-3a", -1450, 500), ("PD2-1", -3500, 2100), ("PD1-3b", 3100, 2300) })
        {
            yield return new Symbol(id, [new Rectangle(new Point(x, y), 200, 200), new Line(new Point(x - 100, y - 100), new Point(x + 100, y + 100))])
            {
                Label = new Label([new LabelLine(id[..5], TextStyle.Quiet)]),
            };
        }

        yield return Stack("main-sr", -4600, 5400, 4, "Main SR");
        yield return Stack("main-sl", 4600, 5400, -4, "Main SL");
    }

    private static Label Name(string name, string quiet) => new([new LabelLine(name), new LabelLine(quiet, TextStyle.Quiet)]);

    private static Symbol Thing(string id, double x, double y, double w, double h, Label label) =>
        new(id, [new Rectangle(new Point(x, y), w, h) { CornerMm = 0.6 }]) { Label = label };

    private static Symbol Stack(string id, double x, double y, double turn, string name) =>
        new(id, [new Rectangle(new Point(x, y), 600, 700, turn), new Rectangle(new Point(x, y + 100), 350, 450, turn) { Pen = Pen.Thin }])
        {
            Label = Name(name, "sub-18 + 2 top-10, on the floor"),
        };

    private static Symbol Wedge(string id, double x, double y, double turn, string mix)
    {
        var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
        Point At(double dx, double dy) => new(x + (dx * cos) - (dy * sin), y + (dx * sin) + (dy * cos));
        return new Symbol(id,
        [
            new Polyline([At(-170, -150), At(170, -150), At(250, 150), At(-250, 150)], Closed: true) { Fill = Fill.Black, Pen = Pen.None },
            new Lettering(new Point(x, y), mix, TextStyle.Strong) { White = true },
        ]);
    }
}
