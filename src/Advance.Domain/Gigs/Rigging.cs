namespace Advance.Domain.Gigs;

/// <summary>What hangs, as written.</summary>
/// <param name="Trusses">In the order written.</param>
/// <param name="Bridles">By name.</param>
/// <param name="Dressing">What trusses carry that is written nowhere else.</param>
public sealed record Rigging(IReadOnlyList<HungTruss> Trusses, IReadOnlyList<Bridle> Bridles, IReadOnlyList<TrussLoad> Dressing)
{
    /// <summary>Nothing hangs.</summary>
    public static readonly Rigging None = new([], [], []);
}
