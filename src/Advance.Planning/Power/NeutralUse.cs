using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// What flows in the neutral of a place with more than one leg, at its worst over all show states and all sets of legs that may be on.
/// </summary>
/// <param name="InUse">With loads in use.</param>
/// <param name="AtMost">With loads at most.</param>
public sealed record NeutralUse(NeutralCase InUse, NeutralCase AtMost)
{
    /// <summary>The largest line current, in use, of the same place.</summary>
    public required Figure<ElectricCurrent> LargestLine { get; init; }
}
