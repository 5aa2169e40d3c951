namespace Advance.Planning;

/// <summary>An upright rectangle in plan view, in metres, as spots are.</summary>
/// <param name="Left">Least x: its stage-right side.</param>
/// <param name="Right">Largest x.</param>
/// <param name="Front">Least y: its downstage side.</param>
/// <param name="Back">Largest y.</param>
internal readonly record struct Area(double Left, double Right, double Front, double Back)
{
    // A millimetre: nobody lays a lead closer.
    private const double Hair = 0.001;

    /// <summary>The rectangle around a middle.</summary>
    public static Area Around(Spot middle, double width, double depth) =>
        new(middle.X - (width / 2), middle.X + (width / 2), middle.Y - (depth / 2), middle.Y + (depth / 2));

    /// <summary>Whether a spot is in it or on its edge.</summary>
    public bool Holds(Spot spot) =>
        spot.X >= Left - Hair && spot.X <= Right + Hair && spot.Y >= Front - Hair && spot.Y <= Back + Hair;

    /// <summary>The spot of it that is nearest.</summary>
    public Spot Nearest(Spot spot) => new(Math.Clamp(spot.X, Left, Right), Math.Clamp(spot.Y, Front, Back));

    /// <summary>How far away a spot is; 0 inside.</summary>
    public double Distance(Spot spot) => spot.To(Nearest(spot));

    /// <summary>Whether a straight line leads through it; touching its edge is not through.</summary>
    public bool IsCrossedBy(Spot from, Spot to) => Inside(from, to, Hair) is { } part && (part.End - part.Start) * from.To(to) > Hair;

    /// <summary>The part of a straight line that lies in it, as shares of the line; null where none does.</summary>
    public (double Start, double End)? Inside(Spot from, Spot to) => Inside(from, to, 0);

    // Clips the line against the four sides, each moved inwards by the margin.
    private (double Start, double End)? Inside(Spot from, Spot to, double margin)
    {
        var (start, end) = (0.0, 1.0);
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        return Clip(-dx, from.X - Left - margin, ref start, ref end)
            && Clip(dx, Right - margin - from.X, ref start, ref end)
            && Clip(-dy, from.Y - Front - margin, ref start, ref end)
            && Clip(dy, Back - margin - from.Y, ref start, ref end)
            && end > start
            ? (start, end)
            : null;
    }

    private static bool Clip(double speed, double room, ref double start, ref double end)
    {
        if (speed == 0)
        {
            return room >= 0;
        }

        var at = room / speed;
        if (speed < 0)
        {
            start = Math.Max(start, at);
        }
        else
        {
            end = Math.Min(end, at);
        }

        return start <= end;
    }
}
