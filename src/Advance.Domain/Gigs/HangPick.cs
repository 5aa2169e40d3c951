using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>Where the frame of a hang is held.</summary>
/// <param name="Hole">The frame's name for it; null where the hole that comes nearest to the tilt asked for is taken.</param>
/// <param name="Hoist">The kind of hoist; null where it hangs dead.</param>
/// <param name="Points">The venue's point, a bridle or a truss, by name; of a pair one for each side, in the order of the sides.</param>
/// <param name="Gear">What is between frame and point, besides the hoist.</param>
/// <param name="At">Where it was written.</param>
public sealed record HangPick(Given<string>? Hole, Given<string>? Hoist, Given<IReadOnlyList<Given<string>>> Points, IReadOnlyList<CountedItem> Gear, Mark At)
{
    /// <summary>Whether the hoist's body hangs at the point and not at the frame.</summary>
    public bool BodyUp { get; init; }

    /// <summary>What it is controlled with; empty where not said.</summary>
    public string Group { get; init; } = "";
}
