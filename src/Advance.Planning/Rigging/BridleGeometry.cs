using Advance.Handbook;

namespace Advance.Planning;

/// <summary>How a bridle lies: where its legs meet, which part of the load each takes, how wide they open.</summary>
internal static class BridleGeometry
{
    /// <summary>Where legs of these lengths meet; null where they do not.</summary>
    /// <param name="anchors">Two or three, m.</param>
    /// <param name="lengths">One for each, m; a leg of no length meets nothing.</param>
    public static RiggingPoint? ApexOf(IReadOnlyList<RiggingPoint> anchors, IReadOnlyList<double> lengths) =>
        !lengths.All(length => length > 0) ? null : anchors.Count == 3 ? ThreeLegBridle.ApexOf(anchors, lengths) : OfTwo(anchors, lengths);

    /// <summary>The part of a load at the apex that goes straight down on the anchor of each leg, together 1; empty where the legs do not tell.</summary>
    /// <param name="legs">From the apex to the anchors, m.</param>
    public static IReadOnlyList<double> SharesOf(IReadOnlyList<RiggingPoint> legs)
    {
        if (legs.Count == 3)
        {
            var flat = Math.Abs(legs[0].Dot(legs[1].Cross(legs[2]))) < 1e-9 * legs[0].Length * legs[1].Length * legs[2].Length;
            return flat ? [] : [.. ThreeLegBridle.FromApex(1, new RiggingPoint(0, 0, 0), legs[0], legs[1], legs[2]).Legs.Select(leg => leg.Vertical)];
        }

        var apart = Math.Sqrt(Math.Pow(legs[1].X - legs[0].X, 2) + Math.Pow(legs[1].Y - legs[0].Y, 2));
        var first = Along(legs[0], legs[1] - legs[0], apart);
        if (apart <= 0 || legs[0].Z <= 0 || legs[1].Z <= 0 || (legs[0].Z * (apart - first)) + (legs[1].Z * first) <= 0)
        {
            return [];
        }

        var two = TwoLegBridle.FromApex(1, legs[0].Z, first, legs[1].Z, apart - first);
        return [two.First.Vertical, two.Second.Vertical];
    }

    /// <summary>The widest angle between two legs, degrees.</summary>
    public static double Widest(IReadOnlyList<RiggingPoint> legs) =>
        (from one in legs from other in legs select Math.Acos(Math.Clamp(one.Dot(other) / (one.Length * other.Length), -1, 1))).Max() * 180 / Math.PI;

    /// <summary>How much more a leg pulls than goes straight down on its anchor: <c>1 / sin α</c>.</summary>
    /// <param name="leg">From the apex up to the anchor, m.</param>
    public static double PullPerDown(RiggingPoint leg) => leg.Length / leg.Z;

    private static double Along(RiggingPoint leg, RiggingPoint line, double apart) => apart > 0 ? -((leg.X * line.X) + (leg.Y * line.Y)) / apart : 0;

    private static RiggingPoint? OfTwo(IReadOnlyList<RiggingPoint> anchors, IReadOnlyList<double> legs)
    {
        var line = anchors[1] - anchors[0];
        var apart = Math.Sqrt((line.X * line.X) + (line.Y * line.Y));
        return apart > 0 && TwoLegBridle.FromLengths(1, apart, line.Z, legs[0], legs[1]) is { } two
            ? new RiggingPoint(anchors[0].X + (line.X / apart * two.Apex.Away), anchors[0].Y + (line.Y / apart * two.Apex.Away), anchors[0].Z - two.Apex.Drop)
            : null;
    }
}
