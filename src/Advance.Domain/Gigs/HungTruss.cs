using Advance.Domain.Facts;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>A straight truss on hoists.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Item">The kind of its sections.</param>
/// <param name="Length">From end to end.</param>
/// <param name="Place">Of its middle.</param>
/// <param name="Trim">Of its lower chord.</param>
/// <param name="Picks">Where it is held, in the order written.</param>
/// <param name="At">Where it was written.</param>
public sealed record HungTruss(string Name, Given<string> Item, Given<Length> Length, Given<Place> Place, Given<HeightFrom> Trim, IReadOnlyList<Pick> Picks, Mark At)
{
    /// <summary>Whether it runs up- and downstage and not across.</summary>
    public bool RunsUpstage { get; init; }

    /// <summary>Of three chords, which way up it hangs; null where nobody says, and then as its figures are for.</summary>
    public Given<Apex>? Apex { get; init; }

    /// <summary>Who is below it; null where nobody says, and then somebody is at rest.</summary>
    public Given<PeopleBelow>? Below { get; init; }

    /// <summary>Whether load cells with a group stop are on its hoists; null where nobody says.</summary>
    public Given<bool>? HasGroupStop { get; init; }

    /// <summary>What holds it when a hoist or a sling lets go; null where nobody says.</summary>
    public Given<string>? Secondary { get; init; }

    /// <summary>Whether somebody climbs it, stands on it or is lifted by it; null where nobody says, and then nobody does.</summary>
    public Given<bool>? HasPeopleOn { get; init; }

    /// <summary>What else it is joined to; null where that is nothing.</summary>
    public Given<string>? JoinedTo { get; init; }

    /// <summary>Its shape, where it is none that the sums are for: <c>corner</c>, <c>grid</c>, <c>curved</c>, <c>ground support</c>; empty for a straight one.</summary>
    public string Shape { get; init; } = "";
}
