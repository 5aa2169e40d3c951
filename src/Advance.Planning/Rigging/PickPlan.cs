using Advance.Domain.Figures;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Where a truss or a hang is held, and what that carries.</summary>
/// <param name="Placed">Where, and by what.</param>
/// <param name="Spot">Seen from above; null where nobody knows.</param>
/// <param name="Level">All level: the harder of stiff and soft.</param>
/// <param name="AtRest">The most at rest, a little uneven.</param>
/// <param name="AtRestCase">In which case; null where unknown.</param>
/// <param name="Moving">The most while it moves, more uneven, without the dynamic factor.</param>
/// <param name="MovingCase">In which case; null where unknown.</param>
/// <param name="Least">The least at rest, a little uneven.</param>
/// <param name="Bound">The most however uneven it is.</param>
/// <param name="Hoist">On the hoist while it moves, with the dynamic factor.</param>
/// <param name="Rating">What the hoist may bear while it moves, by who is below then; unknown where it may not at all.</param>
/// <param name="PointAtRest">On what it hangs on, at rest.</param>
/// <param name="PointMoving">The same while it moves.</param>
public sealed record PickPlan(
    PlacedPick Placed,
    Spot? Spot,
    Figure<Mass> Level,
    Figure<Mass> AtRest,
    Words? AtRestCase,
    Figure<Mass> Moving,
    Words? MovingCase,
    Figure<Mass> Least,
    Figure<Mass> Bound,
    Figure<Mass> Hoist,
    Figure<Mass> Rating,
    Figure<Mass> PointAtRest,
    Figure<Mass> PointMoving)
{
    /// <summary>On the hoist at rest.</summary>
    public required Figure<Mass> HoistAtRest { get; init; }

    /// <summary>What the hoist may bear at rest, over people where somebody is below; unknown where it may not at all.</summary>
    public required Figure<Mass> RatingAtRest { get; init; }

    /// <summary>On its point when its load catches and the hoist pulls until its limiter slips; null where it hangs dead.</summary>
    public Figure<Mass>? Snag { get; init; }

    /// <summary>How far it hangs from straight under what holds it; null where nobody knows.</summary>
    public PickLean? Lean { get; init; }

    /// <summary>What its share of a pull-back pulls at what holds it; null where nothing pulls it back.</summary>
    public SidewaysPull? PulledBack { get; init; }

    /// <summary>What wind and lines that pull at it push sideways, whichever way they do; null where nothing does.</summary>
    public Figure<Mass>? Pushed { get; init; }

    /// <summary>All that pulls sideways at what holds it, each its way.</summary>
    public IEnumerable<SidewaysPull> Pulls => new[] { Lean?.Pull, PulledBack }.OfType<SidewaysPull>();

    /// <summary>What holds it, besides the hoist, and how much of it is used.</summary>
    public IReadOnlyList<PartUse> Parts { get; init; } = [];

    /// <summary>Its name in the plan.</summary>
    public Address Address => Placed.Address;

    /// <summary>On paper.</summary>
    public string Name => Placed.Name;

    /// <summary>How long slings, steels and shackles are, as far as anybody knows.</summary>
    public Length GearLength => GearLengths.Of(Placed.AllGear);

    /// <summary>Its numbers.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        Stated.Of(Address / "level", $"{Name}, carries, level", Level),
        Stated.Of(Address / "at-rest", $"{Name}, most at rest, {AtRestCase}", AtRest),
        Stated.Of(Address / "moving", $"{Name}, most while it moves, {MovingCase}", Moving),
        Stated.Of(Address / "least", $"{Name}, least", Least),
        Stated.Of(Address / "bound", $"{Name}, most however uneven", Bound),
        Stated.Of(Address / "hoist", $"{Name}, on its hoist, moving", Hoist),
        Stated.Of(Address / "hoist-at-rest", $"{Name}, on its hoist, at rest", HoistAtRest),
        Stated.Of(Address / "point-at-rest", $"{Name}, on its point, at rest", PointAtRest),
        Stated.Of(Address / "point-moving", $"{Name}, on its point, moving", PointMoving),
        .. Snag is null ? [] : new[] { Stated.Of(Address / "snag", $"{Name}, on its point when its load catches", Snag) },
        .. Lean is null ? [] : new[] { Stated.Of(Address / "lean", $"{Name}, from the vertical", Lean.Lean), Stated.Of(Address / "side-pull", $"{Name}, sideways, at rest", Lean.Pull.Pull) },
        .. PulledBack is not { } back ? [] : new[] { Stated.Of(Address / "pulled-back", $"{Name}, pulled back, sideways", back.Pull) },
        .. Pushed is null ? [] : new[] { Stated.Of(Address / "pushed", $"{Name}, pushed sideways, either way", Pushed) },
        .. Parts.Select(part => Stated.Of(part.Part.Address / "may", $"{part.Part.Name}, may carry", part.May)),
    ];
}
