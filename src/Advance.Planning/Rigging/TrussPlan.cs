using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A truss, and what it asks of itself and of what holds it.</summary>
/// <param name="Placed">Where it hangs.</param>
/// <param name="Loads">What it carries, itself first.</param>
/// <param name="Weight">All of it.</param>
/// <param name="Centre">Where along it all of it could be put together.</param>
/// <param name="Offset">How far off its centre line.</param>
/// <param name="Study">All cases of level and uneven; null where something that they need is unknown, or nothing holds it level.</param>
/// <param name="Picks">Along it.</param>
public sealed record TrussPlan(
    PlacedTruss Placed, IReadOnlyList<CarriedLoad> Loads, Figure<Mass> Weight, Figure<Length> Centre, Figure<Length> Offset, LiftStudy? Study, IReadOnlyList<PickPlan> Picks)
{
    /// <summary>Its name in the plan.</summary>
    public Address Address => Placed.Address;

    /// <summary>Its name on paper.</summary>
    public string Name => Placed.Name;

    /// <summary>Whether its centre of gravity lies between the outermost picks; null where nobody knows.</summary>
    public bool? IsInside { get; init; }

    /// <summary>What bends it, sagging, in the worst case, moving.</summary>
    public required TrussForce<Torque> Sagging { get; init; }

    /// <summary>What bends it over a pick, in the worst case, moving.</summary>
    public required TrussForce<Torque> Hogging { get; init; }

    /// <summary>Its shear in the worst case, moving.</summary>
    public required TrussForce<Force> Shear { get; init; }

    /// <summary>Moment and shear together, level and uneven; 1 is all of it.</summary>
    public required Figure<double> Together { get; init; }

    /// <summary>What pushes it sideways and presses it.</summary>
    public required TrussSideways Sideways { get; init; }

    /// <summary>How far it sags level, on points that do not give; unknown where its maker does not say how stiff it is.</summary>
    public required Figure<Length> Sag { get; init; }

    /// <summary>Its longest span, or twice what hangs over where that is more; null where nobody knows.</summary>
    public Length? Span { get; init; }

    /// <summary>What is used most however uneven it is; null where nobody knows.</summary>
    public LiftUse? BoundUse { get; init; }

    /// <summary>What is used most with one hoist gone; null where nobody knows.</summary>
    public LiftUse? GoneUse { get; init; }

    /// <summary>How far each pick may be off level until something bears all it can, in the order of the picks; empty where nobody knows.</summary>
    public IReadOnlyList<LiftTolerance> Tolerances { get; init; } = [];

    /// <summary>How far it is reckoned off level while it moves.</summary>
    public required Figure<Length> UnevenMoving { get; init; }

    /// <summary>The open questions behind what it carries.</summary>
    public Doubts RestsOn => Weight.RestsOn.With(Centre.RestsOn).With(Placed.AlongRestsOn);

    /// <summary>Its numbers.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        Stated.Of(Address / "weight", $"{Name}, all that hangs", Weight),
        Stated.Of(Address / "centre", $"{Name}, centre of gravity along it", Centre),
        Stated.Of(Address / "off-centre", $"{Name}, centre of gravity off its centre line", Offset),
        Stated.Of(Address / "uneven", $"{Name}, how uneven it is reckoned while it moves", UnevenMoving),
        Stated.Of(Address / "sag", $"{Name}, how far it sags, level", Sag),
        Stated.Of(Address / "sagging", $"{Name}, sagging moment, moving, {Sagging.Case}", Sagging.Worst),
        Stated.Of(Address / "hogging", $"{Name}, hogging moment, moving, {Hogging.Case}", Hogging.Worst),
        Stated.Of(Address / "shear", $"{Name}, shear, moving, {Shear.Case}", Shear.Worst),
        Stated.Of(Address / "sagging-allowed", $"{Name}, sagging moment allowed", Sagging.Allowed),
        Stated.Of(Address / "hogging-allowed", $"{Name}, hogging moment allowed", Hogging.Allowed),
        Stated.Of(Address / "shear-allowed", $"{Name}, shear allowed", Shear.Allowed),
        Stated.Of(Address / "together", $"{Name}, moment and shear together", Together),
        .. !Sideways.IsPushed ? [] : new[]
        {
            Stated.Of(Address / "sideways", $"{Name}, bent sideways", Sideways.Moment),
            Stated.Of(Address / "bowed", $"{Name}, how far it bows sideways", Sideways.Bowed),
            Stated.Of(Address / "pressed", $"{Name}, pressed or pulled from end to end", Sideways.Pressed),
            Stated.Of(Address / "all-together", $"{Name}, what hangs, pushes and presses together", Sideways.Together),
        },
        .. Picks.SelectMany(pick => pick.Figures),
    ];
}
