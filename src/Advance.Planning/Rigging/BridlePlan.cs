using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A bridle, with what hangs on it.</summary>
/// <param name="Placed">How it lies, and what it is made of.</param>
/// <param name="AtRest">On its apex, at rest.</param>
/// <param name="Moving">The same while it moves.</param>
/// <param name="Legs">In the order of its points; empty where nobody knows how it lies.</param>
/// <param name="Widest">The largest angle between two legs; unknown where nobody knows how it lies.</param>
public sealed record BridlePlan(PlacedBridle Placed, Figure<Mass> AtRest, Figure<Mass> Moving, IReadOnlyList<BridleLegPlan> Legs, Figure<Angle> Widest)
{
    /// <summary>Its name in the plan.</summary>
    public Address Address => Placed.Address;

    /// <summary>As written.</summary>
    public Bridle Bridle => Placed.Bridle;

    /// <summary>The picks on it.</summary>
    public IReadOnlyList<PickPlan> On { get; init; } = [];

    /// <summary>Its name on paper.</summary>
    public string Name => Bridle.Name;

    /// <summary>Its numbers.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        .. Legs.Count == 0 ? [] : new[] { Stated.Of(Address / "angle", $"{Name}, widest angle between two legs", Widest) },
        .. Legs.SelectMany(leg => new[]
        {
            Stated.Of(Address / leg.Point / "pull", $"{Name} leg to {leg.Point}, pull along the leg, moving", leg.Pull),
            Stated.Of(Address / leg.Point / "down", $"{Name} leg to {leg.Point}, straight down, at rest", leg.Down),
            Stated.Of(Address / leg.Point / "sideways", $"{Name} leg to {leg.Point}, sideways, at rest", leg.Sideways),
        }),
        .. Legs.SelectMany(leg => leg.Parts).Select(part => Stated.Of(part.Part.Address / "may", $"{part.Part.Name}, may carry", part.May)),
    ];
}
