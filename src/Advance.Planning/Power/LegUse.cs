using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What flows on one leg somewhere, in the worst show state.</summary>
/// <param name="Leg"><c>L1</c>; empty on a supply of one leg.</param>
/// <param name="InUse">In use, in the state where that is largest.</param>
/// <param name="State">That state.</param>
/// <param name="AtMost">At most, in the state where that is largest.</param>
/// <param name="InStates">In use, in each show state.</param>
public sealed record LegUse(string Leg, Figure<ElectricCurrent> InUse, ShowState State, Figure<ElectricCurrent> AtMost, IReadOnlyList<Figure<ElectricCurrent>> InStates)
{
    /// <summary>The worst state in words: <c>sound check</c>.</summary>
    public string StateInWords => StateShares.Word(State);

    /// <summary>In use, as a share of what the place may carry; unknown where either is.</summary>
    public required Figure<Ratio> OfLimit { get; init; }
}
