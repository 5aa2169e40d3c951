using Advance.Paper.Layout;
using Advance.Paper.Setting;

namespace Advance.Paper.Pictures.Placing;

/// <summary>A scene at one scale: its shapes as marks, its labels placed, and what all that covers.</summary>
internal sealed class Drawing
{
    private readonly Scene scene;
    private readonly Composer composer;
    private readonly Obstacles obstacles = new();
    private readonly List<Named> named = [];

    public Drawing(Scene scene, Frame frame, Composer composer)
    {
        this.scene = scene;
        Frame = frame;
        this.composer = composer;
        foreach (var layer in scene.Layers)
        {
            foreach (var shape in layer.Shapes)
            {
                Take(shape, layer.KeepsLabelsOff);
            }
        }
    }

    public Frame Frame { get; }

    public IReadOnlyList<PlacedLabel> Labels { get; private set; } = [];

    /// <summary>What shapes, labels and leaders cover, in 0.1 mm from the frame's corner.</summary>
    public Box Covered => obstacles.Bounds;

    /// <summary>Places the labels.</summary>
    /// <param name="room">None stands outside of it.</param>
    public void PlaceLabels(Box room)
    {
        var number = Measure(new Label([new LabelLine("88")]));
        Labels = new LabelPlacer(obstacles, room, number.Width, number.Height).Place(named);
    }

    /// <summary>All marks, measured from the frame's corner.</summary>
    public List<Mark> Marks()
    {
        var marks = new List<Mark>();
        var shapes = new ShapeMarks(Frame, composer);
        foreach (var layer in scene.Layers)
        {
            var from = marks.Count;
            foreach (var shape in layer.Shapes)
            {
                shapes.Draw(shape, marks);
            }

            for (var i = from; i < marks.Count; i++)
            {
                marks[i] = marks[i] with { Layer = layer.Name };
            }
        }

        // Leaders first: the ground of a label hides what lies behind it, and may not hide another label.
        foreach (var label in Labels)
        {
            LabelMarks.DrawLeader(label, marks);
        }

        foreach (var label in Labels)
        {
            LabelMarks.DrawGround(label, composer, marks);
        }

        foreach (var label in Labels)
        {
            LabelMarks.Draw(label, composer, marks);
        }

        return marks;
    }

    private void Take(Shape shape, bool keepsOff)
    {
        switch (shape)
        {
            case Symbol symbol:
                TakeSymbol(symbol);
                break;
            case Lettering lettering:
                obstacles.Add(new Obstacle.Words("", LetteringMarks.Box(lettering, Frame, composer)));
                break;
            case Dimension dimension:
                var (line, text) = DimensionMarks.Obstacles(dimension, Frame, composer);
                obstacles.Add(new Obstacle.Wire("", line));
                obstacles.Add(new Obstacle.Words("", text));
                break;
            default:
                // What labels may stand on still counts for what the picture covers.
                if (OutlineOf(shape) is not { } outline)
                {
                    break;
                }

                obstacles.Cover(outline.Bounds);
                if (keepsOff)
                {
                    obstacles.Add(new Obstacle.Edge("", outline));
                }

                break;
        }
    }

    private void TakeSymbol(Symbol symbol)
    {
        var outlines = new List<Outline>();
        foreach (var inner in symbol.Shapes)
        {
            if (OutlineOf(inner) is not { } outline)
            {
                Take(inner, keepsOff: false);
                continue;
            }

            outlines.Add(outline);
            obstacles.Add(symbol.IsArea ? new Obstacle.Edge(symbol.Id, outline) : new Obstacle.Thing(symbol.Id, outline));
        }

        if (symbol.Label is not { Lines.Count: > 0 } label || outlines.Count == 0)
        {
            return;
        }

        var (width, height) = Measure(label);
        var isDark = symbol.Shapes.Any(s => s.Fill is Fill.Black or Fill.Hatch);
        named.Add(new Named(symbol.Id, label, outlines, symbol.IsArea, isDark, width, height));
    }

    private Outline? OutlineOf(Shape shape)
    {
        if (ShapePoints.Of(shape) is not var (points, isClosed) || points.Length == 0)
        {
            return null;
        }

        return new Outline(Array.ConvertAll(points, Frame.Tenths), isClosed);
    }

    private (int Width, int Height) Measure(Label label)
    {
        int width = 0, height = 0;
        foreach (var line in label.Lines)
        {
            var style = LabelMarks.Style(line, composer);
            width = Math.Max(width, composer.Compose(line.Text, style).Most);
            height += LabelMarks.LineHeight(style);
        }

        return (Placing.Frame.UpToTenths(width), Placing.Frame.UpToTenths(height));
    }
}
