using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>A part that bears: sling, steel, shackle, clamp, bond.</summary>
/// <param name="Made">What it is.</param>
/// <param name="Rating">Pulled straight.</param>
public sealed record LiftingGear(LiftingKind Made, Given<Mass> Rating)
{
    /// <summary>Made-up length; null where it has none worth the name.</summary>
    public Given<Length>? Length { get; init; }

    /// <summary>By how much it stretches at its rating; null where nobody says.</summary>
    public Given<Ratio>? Stretch { get; init; }

    /// <summary>In steps of how much it is made shorter, by its links; null where it has one length.</summary>
    public Given<Length>? Step { get; init; }

    /// <summary>By the rules of which region it is marked; null where nobody says.</summary>
    public Given<MarkedBy>? MarkedBy { get; init; }

    /// <summary>What it is rated for laid in other ways, where its label says so.</summary>
    public IReadOnlyList<HitchRow> ByHitch { get; init; } = [];

    /// <summary>How many times its rating it breaks at; null where nobody says.</summary>
    public int? BreaksAt { get; init; }
}
