using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>What hangs, as written.</summary>
/// <param name="Trusses">In the order written.</param>
/// <param name="Bridles">By name.</param>
/// <param name="Dressing">What trusses carry that is written nowhere else.</param>
public sealed record Rigging(IReadOnlyList<HungTruss> Trusses, IReadOnlyList<Bridle> Bridles, IReadOnlyList<TrussLoad> Dressing)
{
    /// <summary>What else is put up and is for its engineer, in the order written.</summary>
    public IReadOnlyList<Structure> Structures { get; init; } = [];

    /// <summary>When it is rigged, in words; null where not said.</summary>
    public Given<string>? RigIn { get; init; }

    /// <summary>When it comes out, in words; null where not said.</summary>
    public Given<string>? RigOut { get; init; }

    /// <summary>Nothing hangs.</summary>
    public static readonly Rigging None = new([], [], []);
}
