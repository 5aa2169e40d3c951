namespace Advance.Planning;

/// <summary>A rectangle on the floor, turned or not.</summary>
/// <param name="Middle">Its middle.</param>
/// <param name="Covers">Across and deep, before it is turned.</param>
/// <param name="Turn">Degrees.</param>
public readonly record struct FloorArea(Spot Middle, Footprint Covers, double Turn)
{
    // What only touches does not stand in.
    private const double Slack = 1e-6;

    /// <summary>
    /// Whether both share more than an edge: two convex shapes are apart if, and only if, they are apart seen along the side of one of them.
    /// </summary>
    public bool Overlaps(FloorArea other)
    {
        var (mine, its) = (this, other);
        return Sides(Turn).Concat(Sides(other.Turn)).All(along => !AreApart(mine, its, along));
    }

    private static IEnumerable<(double X, double Y)> Sides(double turn)
    {
        var angle = turn * Math.PI / 180;
        yield return (Math.Cos(angle), Math.Sin(angle));
        yield return (-Math.Sin(angle), Math.Cos(angle));
    }

    private static bool AreApart(FloorArea a, FloorArea b, (double X, double Y) along)
    {
        var distance = Math.Abs(((b.Middle.X - a.Middle.X) * along.X) + ((b.Middle.Y - a.Middle.Y) * along.Y));
        return distance >= a.Reach(along) + b.Reach(along) - Slack;
    }

    // How far it reaches from its middle in a direction.
    private double Reach((double X, double Y) along)
    {
        var reach = 0.0;
        foreach (var (side, half) in Sides(Turn).Zip([Covers.Width / 2, Covers.Depth / 2]))
        {
            reach += half * Math.Abs((side.X * along.X) + (side.Y * along.Y));
        }

        return reach;
    }
}
