using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A sling, steel or shackle, and how much of it is used.</summary>
/// <param name="Part">The piece.</param>
/// <param name="Carries">What comes to it: at rest where people are below then, and moving otherwise, whichever asks more of it.</param>
/// <param name="Hitch">How it is laid; null for what is not laid around anything.</param>
/// <param name="IsOver">Whether people are below while it carries that.</param>
/// <param name="May">What it may carry so; unknown where nobody knows its rating.</param>
public sealed record PartUse(Piece Part, Figure<Mass> Carries, SlingHitch? Hitch, bool IsOver, Figure<Mass> May)
{
    /// <summary>How many times what comes to it would break it, laid as it is; null where nobody says what it breaks at.</summary>
    public double? Breaks { get; init; }
}
