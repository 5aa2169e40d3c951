using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One stand, pipe or truss that carries fixtures, on its side.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Name">Its name on paper, which fixtures give as their position: <c>LX SR</c>.</param>
/// <param name="Position">As written; the two of a mirrored pair share it.</param>
/// <param name="Spot">Its middle; null where nobody knows.</param>
/// <param name="Carrier">The stand, pipe or truss itself; null where it is in the house.</param>
/// <param name="Trim">How high it is above the floor; unknown where nobody says.</param>
/// <param name="Height">How high it is above what stands below it: the deck or the floor.</param>
public sealed record LightingPosition(
    Address Address, string Name, Position Position, Spot? Spot, Piece? Carrier, Figure<Length> Trim, Figure<Length> Height)
{
    /// <summary>What hangs on it, with margins: fixtures and what comes with them, without the carrier; unknown where one weight is.</summary>
    public Figure<Mass> Carries { get; init; } = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>Whether it runs up- and downstage and not across.</summary>
    public bool RunsUpstage { get; init; }

    /// <summary>The open questions about where it is and how high.</summary>
    public Doubts RestsOn => Doubts.Of(Position.Place.Doubt).With(Height.RestsOn);
}
