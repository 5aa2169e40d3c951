namespace Advance.Planning;

/// <summary>How far something is above what a device bears, per mille of that and rounded up, so that devices of all sizes can be added.</summary>
internal static class CircuitStrain
{
    /// <summary>What a mean of outlets of one box may reach, per mille.</summary>
    public const int Always = 600;

    /// <summary>How far a value is above a limit.</summary>
    public static long Above(long value, int? limit) => limit is not { } most || value <= most ? 0
        : most <= 0 ? 1000 * value
        : ((1000 * (value - most)) + most - 1) / most;

    /// <summary>What an outlet by itself is strained by a wish.</summary>
    public static long On(CircuitGroup group, CircuitWish wish) => Above(wish.Leakage, group.Leakage) + Above(wish.Inrush, group.Inrush);

    /// <summary>What a wish makes of an outlet's limit, per mille and rounded up: what it adds to a box.</summary>
    public static long Loading(CircuitGroup group, CircuitWish wish) =>
        group is { Box: not null, Limit: { } limit and > 0 } ? ((1000L * wish.Most) + limit - 1) / limit : 0;

    /// <summary>
    /// What so many circuits side by side bear, as a sum of their loadings per mille: assumed loading 0.9 for two and three, 0.8 to five, 0.7 to
    /// nine, 0.6 above (IEC 61439-2 table 101, from memory). One by itself is its own limit's business.
    /// </summary>
    public static long Bears(int circuits) => circuits switch
    {
        <= 1 => int.MaxValue,
        <= 3 => 900L * circuits,
        <= 5 => 800L * circuits,
        <= 9 => 700L * circuits,
        _ => (long)Always * circuits,
    };
}
