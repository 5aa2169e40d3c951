using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>Where a truss or a hang is held, with what holds it.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Name">On paper: <c>T1-2</c>, counted along the truss.</param>
/// <param name="Pick">As written.</param>
/// <param name="Hoist">The hoist; null where it hangs dead.</param>
/// <param name="Gear">Slings, steels, shackles.</param>
public sealed record PlacedPick(Address Address, string Name, Pick Pick, Piece? Hoist, IReadOnlyList<Piece> Gear)
{
    /// <summary>The venue's point that it hangs on, m; null for a bridle, and where nobody knows.</summary>
    public RiggingPoint? Above { get; init; }

    /// <summary>Steels between hoist and point, chosen so that its chain comes down to the floor, with their shackles; empty where it does without.</summary>
    public IReadOnlyList<Piece> Drop { get; init; } = [];

    /// <summary>What those steels are; null where it does without.</summary>
    public LegMade? DropMade { get; init; }

    /// <summary>All that holds it besides the hoist.</summary>
    public IReadOnlyList<Piece> AllGear => [.. Gear, .. Drop];
}
