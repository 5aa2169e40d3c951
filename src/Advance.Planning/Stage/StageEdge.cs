using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One edge of a stage.</summary>
/// <param name="Address">Its name in the plan: <c>stage/rear edge</c>.</param>
/// <param name="Stage">Whose edge it is.</param>
/// <param name="Edge">Which one.</param>
/// <param name="Name">Its name on paper: <c>rear edge</c>.</param>
/// <param name="State">What is along it.</param>
/// <param name="Drop">From the deck to the floor.</param>
/// <param name="Steps">The steps that lead up over it.</param>
/// <param name="RestsOn">The open questions about what is along it.</param>
/// <param name="At">Where that was written; the stage where it was not.</param>
public sealed record StageEdge(
    Address Address,
    Stage Stage,
    StageEdges Edge,
    string Name,
    EdgeState State,
    Figure<Length> Drop,
    IReadOnlyList<string> Steps,
    Doubts RestsOn,
    Mark At)
{
    /// <summary>The address of all edges of its stage together: what is not known of any of them is said once.</summary>
    public Address Together { get; init; }
}
