using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>The feet of something that stands, to scale from above with its front at the foot: the edges it may tip over, and how far inside each its weight is.</summary>
internal static class FeetDrawing
{
    private const double FootRadius = 25;
    private const double Cross = 45;

    // How far figures stand from the edges, as a share of the longer side, and at the least, so that at a small scale they stand off the line.
    private const double Beyond = 0.19;
    private const double LeastBeyond = 170;

    /// <summary>Draws it; null where nobody knows its feet.</summary>
    public static Scene? Draw(StandingItem item, Speech speech)
    {
        if (item.Feet.Count < 3)
        {
            return null;
        }

        var corners = item.Feet.Select(foot => At(foot.X, foot.Y)).ToList();
        return new Scene(
            $"Feet of {item.Name} from above, its front at the foot",
            [
                new Layer("edges", [new Polyline([.. corners, corners[0]]) { Pen = Pen.Normal }, .. corners.Select(corner => new Circle(corner, FootRadius) { Fill = Fill.Black })]),
                new Layer("weight", [.. Weight(item.Whole)]),
                new Layer("distances", [.. Distances(item, speech), .. Front(item, corners)]),
            ]);
    }

    private static IEnumerable<Shape> Weight(StandingBody whole)
    {
        if (whole.CentreAcross?.Value is { } x && whole.CentreBack?.Value is { } y)
        {
            var at = At(x.Meters, y.Meters);
            yield return new Circle(at, Cross / 2) { Pen = Pen.Thin };
            yield return new Line(at.Plus(-Cross, 0), at.Plus(Cross, 0)) { Pen = Pen.Thin };
            yield return new Line(at.Plus(0, -Cross), at.Plus(0, Cross)) { Pen = Pen.Thin };
        }
    }

    // Beside the middle of each edge, outside.
    private static IEnumerable<Shape> Distances(StandingItem item, Speech speech) =>
        from edge in item.Whole.Edges
        where edge.Inside.Value is not null
        let offset = item.Feet.Max(foot => (foot.X * edge.X) + (foot.Y * edge.Y))
        let along = item.Feet.Where(foot => Math.Abs((foot.X * edge.X) + (foot.Y * edge.Y) - offset) < 1e-6).ToList()
        let middle = At(along.Average(foot => foot.X), along.Average(foot => foot.Y))
        let away = Away(item)
        select (Shape)new Lettering(middle.Plus(edge.X * away / 2, -edge.Y * away), speech.Say(edge.Inside.Value!.Value))
        {
            Anchor = edge.X > 0.5 ? Anchor.Left : edge.X < -0.5 ? Anchor.Right : default,
        };

    private static IEnumerable<Shape> Front(StandingItem item, IReadOnlyList<Point> corners)
    {
        yield return new Lettering(new Point(0, corners.Max(corner => corner.Y) + (2.3 * Away(item))), "front", TextStyle.Quiet);
    }

    private static double Away(StandingItem item) => Math.Max(LeastBeyond, Beyond * Longest(item));

    private static double Longest(StandingItem item) =>
        1000 * Math.Max(item.Feet.Max(foot => foot.X) - item.Feet.Min(foot => foot.X), item.Feet.Max(foot => foot.Y) - item.Feet.Min(foot => foot.Y));

    // Up on the page is to the rear.
    private static Point At(double x, double y) => new(x * 1000, -y * 1000);
}
