using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One kind of case or loose piece at one narrow place of the way in.</summary>
/// <param name="Address">Its name in the plan: <c>access/porch/deck-cart</c>.</param>
/// <param name="Item">Id of the kind.</param>
/// <param name="Count">How many of it.</param>
/// <param name="IsCase">Whether other things are in it, which could come in singly.</param>
/// <param name="Bulk">What one of it takes up; null where nobody knows.</param>
/// <param name="Gross">What the heaviest of them weighs.</param>
/// <param name="Step">The narrow place.</param>
/// <param name="Verdict">Whether it comes through.</param>
/// <param name="Hindrance">What keeps it from that, or what is not known.</param>
/// <param name="Stuck">Ids of what would not come through even if it came singly.</param>
/// <param name="Longest">How long what has its width may be to go round the corner, both with clearance; null where the way goes straight on.</param>
/// <param name="Grown">How long it is with clearance.</param>
/// <param name="RestsOn">The open questions behind it.</param>
public sealed record Passage(
    Address Address,
    string Item,
    int Count,
    bool IsCase,
    Bulk? Bulk,
    Figure<Mass> Gross,
    AccessStep Step,
    Verdict Verdict,
    Hindrance Hindrance,
    IReadOnlyList<string> Stuck,
    Figure<Length>? Longest,
    Length? Grown,
    Doubts RestsOn)
{
    /// <summary>Its number, under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
        Longest is { } longest ? [Stated.Of(Address / "longest", $"longest that goes round the {Step.What} as wide as {Item}, with clearance", longest)] : [];
}
