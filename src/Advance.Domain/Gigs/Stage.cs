using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>One playing area. Across is x, zero on the centre line, towards stage left; y runs upstage from the downstage edge.</summary>
/// <param name="Name">Its key; <c>stage</c> where the gig has one.</param>
/// <param name="Size">Width across, depth.</param>
/// <param name="Height">Of the deck; unknown where left out.</param>
/// <param name="DownstageEdge">Where it stands in the venue.</param>
/// <param name="Decks">What it is built from; null where it is built in or not said.</param>
/// <param name="Steps">How people get up; null where there are none.</param>
/// <param name="Railed">The edges that have a rail; null where not said.</param>
/// <param name="Things">What stands on it for the whole gig.</param>
/// <param name="At">Where it was written.</param>
public sealed record Stage(
    string Name,
    Given<Size> Size,
    Given<HeightFrom> Height,
    Given<Place>? DownstageEdge,
    CountedItem? Decks,
    Thing? Steps,
    Given<StageEdges>? Railed,
    IReadOnlyList<Thing> Things,
    Mark At)
{
    /// <summary>The edges that stand against a wall: nobody falls off there.</summary>
    public Given<StageEdges>? AgainstWall { get; init; }

    /// <summary>The edges that the audience looks over, and that stay open; the front where not said.</summary>
    public Given<StageEdges>? AudienceEdges { get; init; }

    /// <summary>What the deck carries, spread; null where nobody says.</summary>
    public Given<Pressure>? DeckRating { get; init; }

    /// <summary>What the deck carries in one place; null where nobody says.</summary>
    public Given<Mass>? LegRating { get; init; }

    /// <summary>Between the deck and what stands on it; null where nobody says.</summary>
    public Given<double>? Friction { get; init; }

    /// <summary>The edges that have a rail, in words; null where not said.</summary>
    public Given<string>? Rails => Railed?.Select(StageEdgeWords.Of);
}
