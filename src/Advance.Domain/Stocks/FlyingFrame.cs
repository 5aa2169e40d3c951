using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>What only a flying frame has, all from its maker, seen from the front pin that the first box hangs on, along the frame's own axes.</summary>
/// <param name="Below">Its mating face.</param>
/// <param name="Holes">Where it may be held.</param>
public sealed record FlyingFrame(string Below, IReadOnlyList<FrameHole> Holes)
{
    /// <summary>How far its centre of gravity is behind the pin; null where nobody says.</summary>
    public Given<Length>? CentreBehind { get; init; }

    /// <summary>How far its centre of gravity is above the pin; null means not at all.</summary>
    public Given<Length>? CentreAbove { get; init; }

    /// <summary>What may hang under it, all together; null where nobody says.</summary>
    public Given<Mass>? Rating { get; init; }

    /// <summary>How many boxes it may carry between which tilts; empty where nobody says.</summary>
    public IReadOnlyList<FrameLimit> Limits { get; init; } = [];
}
