namespace Advance.Handbook;

/// <summary>
/// A load on three legs: <c>Σ Tᵢ nᵢ = (0, 0, W)</c> with unit vectors from the apex to the anchors. A leg that would have to push is slack: then the
/// apex lies outside the triangle of the anchors and does not stay there. Source: <see cref="Statics.Bridles"/>.
/// </summary>
public sealed class ThreeLegBridle
{
    private ThreeLegBridle(double load, RiggingPoint apex, IReadOnlyList<BridleLeg> legs) => (Load, Apex, Legs) = (load, apex, legs);

    /// <summary>What hangs at the apex, N.</summary>
    public double Load { get; }

    /// <summary>Where the legs meet.</summary>
    public RiggingPoint Apex { get; }

    /// <summary>The legs, in the order of the anchors.</summary>
    public IReadOnlyList<BridleLeg> Legs { get; }

    /// <summary>Which legs are slack, from 0; empty where all three pull.</summary>
    public IReadOnlyList<int> Slack => [.. Enumerable.Range(0, 3).Where(leg => Legs[leg].IsSlack)];

    /// <summary>From where everything is.</summary>
    /// <param name="load">W, N, 0 or more.</param>
    /// <param name="apex">Where the legs meet.</param>
    /// <param name="first">An anchor.</param>
    /// <param name="second">Another.</param>
    /// <param name="third">And the third.</param>
    /// <exception cref="ArgumentException">The three legs lie in one plane, which leaves their shares open, or the load is negative.</exception>
    public static ThreeLegBridle FromApex(double load, RiggingPoint apex, RiggingPoint first, RiggingPoint second, RiggingPoint third)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(load);
        RiggingPoint[] legs = [first - apex, second - apex, third - apex];
        var determinant = legs[0].Dot(legs[1].Cross(legs[2]));
        if (Math.Abs(determinant) < 1e-9 * legs[0].Length * legs[1].Length * legs[2].Length)
        {
            throw new ArgumentException("Three legs in one plane do not tell how they share a load.", nameof(apex));
        }

        return new(load, apex, [.. Enumerable.Range(0, 3).Select(leg => LegOf(legs[leg], load * legs[(leg + 1) % 3].Cross(legs[(leg + 2) % 3]).Z / determinant))]);
    }

    /// <summary>From how long the legs are; null where they do not meet, or the anchors lie in one line.</summary>
    /// <param name="load">W, N, 0 or more.</param>
    /// <param name="anchors">Three.</param>
    /// <param name="lengths">m, one for each.</param>
    public static ThreeLegBridle? FromLengths(double load, IReadOnlyList<RiggingPoint> anchors, IReadOnlyList<double> lengths) =>
        ApexOf(anchors, lengths) is { } apex && (anchors[0] - apex).Dot((anchors[1] - apex).Cross(anchors[2] - apex)) != 0
            ? FromApex(load, apex, anchors[0], anchors[1], anchors[2])
            : null;

    /// <summary>Where three legs meet: the lower of the two places at those distances from the anchors; null where there is none.</summary>
    /// <param name="anchors">Three.</param>
    /// <param name="lengths">m, one for each.</param>
    public static RiggingPoint? ApexOf(IReadOnlyList<RiggingPoint> anchors, IReadOnlyList<double> lengths)
    {
        var (side, other) = (anchors[1] - anchors[0], anchors[2] - anchors[0]);
        var apart = side.Length;
        var along = (1 / apart) * side;
        var inward = other - (other.Dot(along) * along);
        if (!(inward.Length > 1e-9 * apart))
        {
            return null;
        }

        var across = (1 / inward.Length) * inward;
        var x = ((lengths[0] * lengths[0]) - (lengths[1] * lengths[1]) + (apart * apart)) / (2 * apart);
        var (u, v) = (other.Dot(along), other.Dot(across));
        var y = ((lengths[0] * lengths[0]) - (lengths[2] * lengths[2]) + (u * u) + (v * v) - (2 * u * x)) / (2 * v);
        var square = (lengths[0] * lengths[0]) - (x * x) - (y * y);
        var normal = along.Cross(across);
        var down = normal.Z > 0 ? -1 : 1;
        return square > 0 ? anchors[0] + (x * along) + (y * across) + (down * Math.Sqrt(square) * normal) : null;
    }

    private static BridleLeg LegOf(RiggingPoint leg, double perMetre) =>
        new(leg.Length, perMetre * leg.Length, perMetre * leg.Z, perMetre * Math.Sqrt((leg.X * leg.X) + (leg.Y * leg.Y)));
}
