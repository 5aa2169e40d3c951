using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>Where a truss is held.</summary>
/// <param name="Along">From the end that is named first: stage right, or downstage.</param>
/// <param name="Hoist">The kind of hoist; null where it hangs dead.</param>
/// <param name="Point">The venue's point, or a bridle, by name.</param>
/// <param name="Gear">What is between the truss and the point, besides the hoist.</param>
/// <param name="At">Where it was written.</param>
public sealed record Pick(Given<Length> Along, Given<string>? Hoist, Given<string> Point, IReadOnlyList<CountedItem> Gear, Mark At)
{
    /// <summary>Whether the hoist's body is at the truss and its chain runs up; without it the body is at the truss.</summary>
    public bool BodyUp { get; init; }

    /// <summary>How its slings are laid; null where nobody says.</summary>
    public Given<SlingHitch>? Hitch { get; init; }

    /// <summary>Which chords its slings hold; null where nobody says.</summary>
    public Given<HeldChords>? Holds { get; init; }

    /// <summary>How often its slings go around a chord; null where nobody says.</summary>
    public Given<SlingWrap>? Wrap { get; init; }

    /// <summary>What it is controlled with, empty where not said.</summary>
    public string Group { get; init; } = "";
}
