using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out how much of each part between a truss and the roof is used: by its hitch, its angle, and who is below.</summary>
internal sealed class PartUses(Brief brief)
{
    private RiggingPolicies Policies => brief.Company.Policies.Rigging;

    /// <summary>Of parts that hang straight.</summary>
    /// <param name="parts">One after the other.</param>
    /// <param name="hitch">As written; null for the company's.</param>
    /// <param name="isOver">Whether people are below at rest.</param>
    /// <param name="rest">What comes to them at rest.</param>
    /// <param name="moving">And while it moves.</param>
    public IReadOnlyList<PartUse> Straight(IEnumerable<Piece> parts, Given<SlingHitch>? hitch, bool isOver, Figure<Mass> rest, Figure<Mass> moving)
    {
        var counts = isOver && Asks(rest, moving);
        return [.. parts.Where(part => part.Kind?.Lifting is not null).Select(part => Of(part, hitch, counts, counts ? rest : moving, 0))];
    }

    /// <summary>Of the parts of a bridle's leg: over people, as legs are.</summary>
    /// <param name="parts">One after the other.</param>
    /// <param name="hitch">As written; null for the company's.</param>
    /// <param name="pull">In the leg, moving.</param>
    /// <param name="fromVertical">Of the leg, degrees.</param>
    public IReadOnlyList<PartUse> OfLeg(IEnumerable<Piece> parts, Given<SlingHitch>? hitch, Figure<Mass> pull, double fromVertical) =>
        [.. parts.Where(part => part.Kind?.Lifting is not null).Select(part => Of(part, hitch, isOver: true, pull, fromVertical))];

    // Whether what comes to a part at rest, over people, asks more of it than all that comes to it while it moves over nobody.
    private bool Asks(Figure<Mass> rest, Figure<Mass> moving) =>
        rest.Value is { } still && moving.Value is { } moved && still.Kilograms > Policies.OverPeople / 100 * moved.Kilograms;

    private PartUse Of(Piece part, Given<SlingHitch>? hitch, bool isOver, Figure<Mass> carries, double fromVertical)
    {
        var gear = part.Kind!.Lifting!;
        var laid = gear.Made == LiftingKind.Roundsling || gear.ByHitch.Count > 0 ? hitch is { } said ? Figure.From(said.Select(one => FactorOf(gear, one))) : Figure.Policy("hitch", FactorOf(gear, Policies.Hitch)) : null;
        var angle = gear.Made == LiftingKind.Eye ? EyeBolts.Share(fromVertical) : Hitches.Straight;
        var factor = laid ?? new Figure<double>(angle, Doubts.None, Reason.Derived.It);
        var may = Sum.Of($"{part.Name}, may carry", "m = r · h · p / 100", SourceOf(gear))
            .Put("r", Figure.From(gear.Rating))
            .Put("h", factor)
            .Put("p", isOver ? Figure.Policy("over-people", Policies.OverPeople) : new Figure<double>(100, Doubts.None, Reason.Derived.It))
            .Gives((rating, kept, left) => rating * (kept * left / 100));
        var breaks = gear is { BreaksAt: { } times, Rating.IsKnown: true } && carries.Value is { Kilograms: > 0 } load ? times * gear.Rating.Value.Kilograms * factor.Value / load.Kilograms : null;
        return new PartUse(part, carries, laid is null ? null : hitch is { IsKnown: true } known ? known.Value : Policies.Hitch, isOver, may) { Breaks = breaks };
    }

    // Its own label goes before what hitches of its region keep.
    private static double FactorOf(LiftingGear gear, SlingHitch hitch) =>
        gear.ByHitch.FirstOrDefault(row => row.Hitch == hitch) is { } own && gear.Rating.Is(out var straight) && straight.Kilograms > 0 ? own.Rating / straight : FactorOf(hitch);

    private static Publication SourceOf(LiftingGear gear) => gear switch
    {
        { Made: LiftingKind.Eye } => RiggingStandards.EyeBolts,
        { MarkedBy: { IsKnown: true, Value: MarkedBy.Asme } } => RiggingStandards.AsmeB309,
        _ => RiggingStandards.En1492,
    };

    /// <summary>Which share of its straight rating a sling keeps.</summary>
    internal static double FactorOf(SlingHitch hitch) => hitch switch
    {
        SlingHitch.Straight => Hitches.Straight,
        SlingHitch.Basket => Hitches.Basket(45)!.Value,
        SlingHitch.UprightBasket => Hitches.Basket(0)!.Value,
        SlingHitch.WideBasket => Hitches.Basket(60)!.Value,
        _ => Hitches.Choke,
    };
}
