using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Where a truss is held, and what that carries.</summary>
/// <param name="Placed">Where, and by what.</param>
/// <param name="Spot">Seen from above; null where nobody knows.</param>
/// <param name="Level">All level: the harder of stiff and soft.</param>
/// <param name="AtRest">The most at rest, a little uneven.</param>
/// <param name="AtRestCase">In which case.</param>
/// <param name="Moving">The most while it moves, more uneven, without the dynamic factor.</param>
/// <param name="MovingCase">In which case.</param>
/// <param name="Least">The least of all cases in which nothing is gone.</param>
/// <param name="Bound">The most however uneven it is.</param>
/// <param name="Hoist">On the hoist while it moves, with the dynamic factor.</param>
/// <param name="Rating">What the hoist may bear, by who is below; unknown where it may not at all.</param>
/// <param name="PointAtRest">On what it hangs on, at rest.</param>
/// <param name="PointMoving">The same while it moves.</param>
public sealed record PickPlan(
    PlacedPick Placed,
    Spot? Spot,
    Figure<Mass> Level,
    Figure<Mass> AtRest,
    string AtRestCase,
    Figure<Mass> Moving,
    string MovingCase,
    Figure<Mass> Least,
    Figure<Mass> Bound,
    Figure<Mass> Hoist,
    Figure<Mass> Rating,
    Figure<Mass> PointAtRest,
    Figure<Mass> PointMoving)
{
    /// <summary>Its name in the plan.</summary>
    public Address Address => Placed.Address;

    /// <summary>On paper.</summary>
    public string Name => Placed.Name;

    /// <summary>Its numbers.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        Stated.Of(Address / "level", $"{Name}, carries, level", Level),
        Stated.Of(Address / "at-rest", $"{Name}, most at rest, {AtRestCase}", AtRest),
        Stated.Of(Address / "moving", $"{Name}, most while it moves, {MovingCase}", Moving),
        Stated.Of(Address / "least", $"{Name}, least", Least),
        Stated.Of(Address / "bound", $"{Name}, most however uneven", Bound),
        Stated.Of(Address / "hoist", $"{Name}, on its hoist, moving", Hoist),
        Stated.Of(Address / "point-at-rest", $"{Name}, on its point, at rest", PointAtRest),
        Stated.Of(Address / "point-moving", $"{Name}, on its point, moving", PointMoving),
    ];
}
