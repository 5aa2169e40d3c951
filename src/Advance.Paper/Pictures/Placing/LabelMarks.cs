using Advance.Paper.Layout;
using Advance.Paper.Setting;

namespace Advance.Paper.Pictures.Placing;

/// <summary>Draws placed labels.</summary>
internal static class LabelMarks
{
    public static TypeStyle Style(LabelLine line, Composer composer) => composer.Scale.Style(line.Style, composer.Body);

    /// <summary>Height of a line of a label: tighter than running text.</summary>
    public static int LineHeight(TypeStyle style) => (int)(style.Size * 1.16);

    public static void DrawLeader(PlacedLabel label, List<Mark> marks)
    {
        if (label.Leader is not { } leader)
        {
            return;
        }

        PathStep[] steps =
        [
            new(PathStepKind.Move, Frame.ToMils(leader.X1), Frame.ToMils(leader.Y1)),
            new(PathStepKind.Line, Frame.ToMils(leader.X2), Frame.ToMils(leader.Y2)),
        ];
        marks.Add(ShapeMarks.Inked(new PathMark(steps), Pen.Thin) with { Layer = "leaders" });
        marks.Add(Dot(leader));
    }

    /// <summary>A ground of paper under each line, so that a grid does not run through the words, and is not hidden where there are none.</summary>
    public static void DrawGround(PlacedLabel label, Composer composer, List<Mark> marks)
    {
        if (label.IsInside)
        {
            return;
        }

        var words = new List<Mark>();
        Draw(label, composer, words);
        foreach (var mark in words)
        {
            if (mark is RunMark run)
            {
                marks.Add(new BoxMark(run.X - 600, run.Top - 1200, run.Width + 1200, run.Style.Cap + 2400) { Fill = Shade.White, Layer = "labels" });
            }
        }
    }

    public static void Draw(PlacedLabel label, Composer composer, List<Mark> marks)
    {
        if (label.Box.IsEmpty)
        {
            return;
        }

        IReadOnlyList<LabelLine> lines = label.Number > 0 ? [new LabelLine($"{label.Number}")] : label.Label.Lines;
        var y = Frame.ToMils(label.Box.Top);
        foreach (var line in lines)
        {
            var style = Style(line, composer);
            var words = composer.Compose(line.Text, style).OnOneLine(0, out var width);
            var height = LineHeight(style);
            if (words.Length > 0)
            {
                marks.Add(new RunMark(Left(label, width), y + ((height + style.Cap) / 2), style, words, width) { Layer = "labels" });
            }

            y += height;
        }
    }

    /// <summary>Lines keep to the side on which the symbol is; over, under and in it they stand in the middle.</summary>
    private static int Left(PlacedLabel label, int width)
    {
        int left = Frame.ToMils(label.Box.Left), right = Frame.ToMils(label.Box.Right);
        if (label.Leader is { } leader && leader.X1 > label.Box.Right)
        {
            return right - width;
        }

        return label.Leader is { } other && other.X1 < label.Box.Left ? left : left + ((right - left - width) / 2);
    }

    private static PathMark Dot(Segment leader)
    {
        const int r = 900;
        int x = Frame.ToMils(leader.X2), y = Frame.ToMils(leader.Y2);
        PathStep[] steps =
        [
            new(PathStepKind.Move, x - r, y),
            new(PathStepKind.Line, x, y - r),
            new(PathStepKind.Line, x + r, y),
            new(PathStepKind.Line, x, y + r),
            new(PathStepKind.Close, x - r, y),
        ];
        return new PathMark(steps) { Fill = Fill.Black, Layer = "leaders" };
    }
}
