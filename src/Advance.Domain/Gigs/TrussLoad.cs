using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>What a truss carries that is written nowhere else: drape, a screen, a cable loom.</summary>
/// <param name="Truss">Its name.</param>
/// <param name="What">In words.</param>
/// <param name="Item">Its kind in the stock; null for what is weighed here.</param>
/// <param name="Count">How many.</param>
/// <param name="Weight">Of each; null where its kind has one.</param>
/// <param name="Along">Where; of a spread load, where it begins; null where it is spread over the whole truss.</param>
/// <param name="To">Where a spread load ends; null for one that is in one place.</param>
/// <param name="Offset">From the centre line of the truss, upstage or stage left; null for none.</param>
/// <param name="At">Where it was written.</param>
public sealed record TrussLoad(
    string Truss, string What, Given<string>? Item, int Count, Given<Mass>? Weight, Given<Length>? Along, Given<Length>? To, Given<Length>? Offset, Mark At)
{
    /// <summary>What the wind sees of it where it hangs in the open; null where nobody says.</summary>
    public Given<Area>? WindArea { get; init; }

    /// <summary>What it pulls the truss sideways with, to either side, besides wind: a loom that runs off tight, a line; null where it pulls straight down alone.</summary>
    public Given<Mass>? Sideways { get; init; }

    /// <summary>What holds it when its fixing lets go; null where nobody says.</summary>
    public Given<string>? Secondary { get; init; }
}
