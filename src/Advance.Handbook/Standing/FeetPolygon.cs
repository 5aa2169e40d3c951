namespace Advance.Handbook;

/// <summary>The polygon around the feet of a thing, in metres. Source: <see cref="RigidBodies.Balance"/>.</summary>
public sealed class FeetPolygon
{
    // What lies on a line but for the last bits.
    private const double Hair = 1e-9;

    private FeetPolygon(IReadOnlyList<(double X, double Y)> corners) => Corners = corners;

    /// <summary>Its corners, anticlockwise, x to the right and y up; feet inside it are left out.</summary>
    public IReadOnlyList<(double X, double Y)> Corners { get; }

    /// <summary>Its edges: the way out of it, of length 1, and how far the edge is from the middle that feet are measured from.</summary>
    public IEnumerable<(double X, double Y, double Offset)> Edges
    {
        get
        {
            for (var index = 0; index < Corners.Count; index++)
            {
                var (from, to) = (Corners[index], Corners[(index + 1) % Corners.Count]);
                var (along, up) = (to.X - from.X, to.Y - from.Y);
                var length = Math.Sqrt((along * along) + (up * up));
                var (x, y) = (up / length, -along / length);
                yield return (x, y, (x * from.X) + (y * from.Y));
            }
        }
    }

    /// <summary>Makes one; null for fewer than three feet that do not stand in one line.</summary>
    public static FeetPolygon? Of(IEnumerable<(double X, double Y)> feet)
    {
        var sorted = feet.Select(foot => (X: Micrometres(foot.X), Y: Micrometres(foot.Y))).Distinct().OrderBy(foot => foot.X).ThenBy(foot => foot.Y).ToList();
        if (sorted.Count < 3)
        {
            return null;
        }

        List<(double X, double Y)> corners = [.. Half(sorted), .. Half(Enumerable.Reverse(sorted))];
        return corners.Count < 3 ? null : new FeetPolygon(corners);
    }

    /// <summary>How far a point is inside an edge; negative outside.</summary>
    /// <param name="edge">One of <see cref="Edges"/>.</param>
    /// <param name="x">m.</param>
    /// <param name="y">m.</param>
    public static double Inside((double X, double Y, double Offset) edge, double x, double y) => edge.Offset - (edge.X * x) - (edge.Y * y);

    // Nobody sets feet to less, and what is nearer to a line than that is on it.
    private static double Micrometres(double metres) => Math.Round(metres, 6, MidpointRounding.AwayFromZero);

    // One half of the hull, without its last corner.
    private static List<(double X, double Y)> Half(IEnumerable<(double X, double Y)> feet)
    {
        var hull = new List<(double X, double Y)>();
        foreach (var foot in feet)
        {
            while (hull.Count > 1 && Turn(hull[^2], hull[^1], foot) <= Hair)
            {
                hull.RemoveAt(hull.Count - 1);
            }

            hull.Add(foot);
        }

        hull.RemoveAt(hull.Count - 1);
        return hull;
    }

    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
}
