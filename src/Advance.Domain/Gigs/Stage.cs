using Advance.Domain.Facts;
using Advance.Domain.Places;

namespace Advance.Domain.Gigs;

/// <summary>One playing area. Across is x, zero on the centre line, towards stage left; y runs upstage from the downstage edge.</summary>
/// <param name="Name">Its key; <c>stage</c> where the gig has one.</param>
/// <param name="Size">Width across, depth.</param>
/// <param name="Height">Of the deck; unknown where left out.</param>
/// <param name="DownstageEdge">Where it stands in the venue.</param>
/// <param name="Decks">What it is built from; null where it is built in or not said.</param>
/// <param name="Steps">How people get up; null where there are none.</param>
/// <param name="Rails">As written; null where not said.</param>
/// <param name="Things">What stands on it for the whole gig.</param>
/// <param name="At">Where it was written.</param>
public sealed record Stage(
    string Name,
    Given<Size> Size,
    Given<HeightFrom> Height,
    Given<Place>? DownstageEdge,
    CountedItem? Decks,
    Thing? Steps,
    Given<string>? Rails,
    IReadOnlyList<Thing> Things,
    Mark At);
