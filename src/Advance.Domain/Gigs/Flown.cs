using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>How a hang of boxes is flown.</summary>
/// <param name="Splays">How much further down each box looks than what it hangs on, from the top; the first to the frame.</param>
/// <param name="Picks">Where its frame is held: one pick, or two one behind the other.</param>
public sealed record Flown(Given<IReadOnlyList<Given<Angle>>> Splays, IReadOnlyList<HangPick> Picks)
{
    /// <summary>Of its frame, nose down positive; null where it follows from the one hole that it hangs by.</summary>
    public Given<Angle>? Tilt { get; init; }

    /// <summary>Of its lowest edge; null where not said.</summary>
    public Given<HeightFrom>? Trim { get; init; }

    /// <summary>Of the hole that it hangs by, of two the front one; null where not said.</summary>
    public Given<HeightFrom>? PickTrim { get; init; }

    /// <summary>Who is below it; null where nobody says, and then somebody is at rest.</summary>
    public Given<PeopleBelow>? Below { get; init; }

    /// <summary>What holds it when a hoist, a frame or a sling lets go; null where nobody says.</summary>
    public Given<string>? Secondary { get; init; }

    /// <summary>What pulls its foot back; null for nothing.</summary>
    public PullBack? PullBack { get; init; }

    /// <summary>How low it may hang at the lowest, for what is to be seen or to pass below; null where nobody says.</summary>
    public Given<HeightFrom>? StaysAbove { get; init; }
}
