using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>Legs from several points to one hook.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Points">The venue's points, two or three.</param>
/// <param name="Legs">How long each leg is made, in the order of the points; empty where that is worked out.</param>
/// <param name="At">Where it was written.</param>
public sealed record Bridle(string Name, IReadOnlyList<string> Points, IReadOnlyList<Length> Legs, Mark At)
{
    /// <summary>What each leg is made of, from the stock; empty where that is chosen.</summary>
    public IReadOnlyList<CountedItem> Gear { get; init; } = [];

    /// <summary>How the slings of its legs are laid; null where nobody says.</summary>
    public Given<SlingHitch>? Hitch { get; init; }

    /// <summary>How far under the points its hook hangs, where legs are worked out; null where legs are said.</summary>
    public Given<Length>? Drop { get; init; }
}
