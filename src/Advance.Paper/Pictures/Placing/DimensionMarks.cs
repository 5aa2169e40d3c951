using Advance.Paper.Layout;
using Advance.Paper.Setting;

namespace Advance.Paper.Pictures.Placing;

/// <summary>Draws a dimension: the line, a tick at each end, and the text beside it, readable from below or from the right.</summary>
internal static class DimensionMarks
{
    private const int Tick = 4300;

    public static IEnumerable<Mark> Of(Dimension dimension, Frame frame, Composer composer)
    {
        var (from, to, sideX, sideY) = Ends(dimension, frame);
        var pen = Pen.Thin;
        yield return Line(from.X, from.Y, to.X, to.Y, pen);
        foreach (var (x, y) in new[] { from, to })
        {
            yield return Line(
                x - (int)(sideX * Tick), y - (int)(sideY * Tick), x + (int)(sideX * Tick), y + (int)(sideY * Tick), pen);
        }

        var words = Words(dimension, composer, out var width);
        if (words.Length == 0)
        {
            yield break;
        }

        var (origin, turn) = Text(from, to, width);
        yield return new RunMark(origin.X, origin.Y, Style(composer), words, width) { Turn = turn };
    }

    /// <summary>What it covers, in 0.1 mm of the paper.</summary>
    public static (Segment Line, Box Text) Obstacles(Dimension dimension, Frame frame, Composer composer)
    {
        var (from, to, _, _) = Ends(dimension, frame);
        _ = Words(dimension, composer, out var width);
        var (origin, turn) = Text(from, to, width);
        var box = LetteringMarks.Turned(InTenths(origin.X), InTenths(origin.Y), 0, -Style(composer).Cap, width, Style(composer).Cap, turn);
        return (new Segment(InTenths(from.X), InTenths(from.Y), InTenths(to.X), InTenths(to.Y)), box);
    }

    private static int InTenths(int mils) => Frame.Tenths(Mil.ToMm(mils));

    private static TypeStyle Style(Composer composer) => new(composer.Scale.Small, IsStrong: true, Shade.Ink);

    private static PlacedWord[] Words(Dimension dimension, Composer composer, out int width) =>
        composer.Compose(dimension.Text, Style(composer)).OnOneLine(0, out width);

    private static ((int X, int Y) From, (int X, int Y) To, double SideX, double SideY) Ends(Dimension dimension, Frame frame)
    {
        var from = frame.Mils(dimension.From);
        var to = frame.Mils(dimension.To);
        double dx = to.X - from.X, dy = to.Y - from.Y;
        var length = Math.Max(1, Math.Sqrt((dx * dx) + (dy * dy)));
        // Left of the way, with y downwards.
        double sideX = dy / length, sideY = -dx / length;
        var offset = Mil.FromMm(double.IsFinite(dimension.OffsetMm) ? Math.Clamp(dimension.OffsetMm, -100, 100) : 0);
        int ox = (int)(sideX * offset), oy = (int)(sideY * offset);
        return ((from.X + ox, from.Y + oy), (to.X + ox, to.Y + oy), sideX, sideY);
    }

    private static ((int X, int Y) Origin, double Turn) Text((int X, int Y) from, (int X, int Y) to, int width)
    {
        const int off = 3000;
        var turn = Math.Atan2(to.Y - from.Y, to.X - from.X) * 180 / Math.PI;
        if (turn is > 89.999 or <= -90.001)
        {
            turn += turn > 0 ? -180 : 180;
        }

        var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
        double middleX = (from.X + to.X) / 2.0, middleY = (from.Y + to.Y) / 2.0;
        return (((int)(middleX - (width / 2.0 * cos) + (off * sin)), (int)(middleY - (width / 2.0 * sin) - (off * cos))), turn);
    }

    private static PathMark Line(int x1, int y1, int x2, int y2, Pen pen) =>
        ShapeMarks.Inked(new PathMark([new PathStep(PathStepKind.Move, x1, y1), new PathStep(PathStepKind.Line, x2, y2)]), pen);
}
