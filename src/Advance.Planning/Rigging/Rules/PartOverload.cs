using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/part-overload</c></summary>
internal sealed class PartOverload : Rule<PartOverload.Case>
{
    public override string Name => "rigging/part-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A sling, steel or shackle carries more than it may by its hitch and by who is below.";

    public override string Why => "A chain of good parts breaks at the one that nobody looked up.";

    public override string Cures => "A stronger part, or two.";

    public override Publication Source => Handbook.RiggingStandards.En1492;

    // At rest over people half of what its maker rates it at, which is the venues' rule; all of it while it moves over nobody.
    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. from held in Held(plan)
           let pick = held.Pick
           from part in pick.Placed.Gear
           where part.Kind?.Lifting is not null && pick.PointMoving.Value is not null
           let isOver = IsOver(held.Below) && pick.PointAtRest.Value is { } rest && 2 * rest.Kilograms > pick.PointMoving.Value!.Value.Kilograms
           select new Case(pick.Name, part, isOver ? pick.PointAtRest : pick.PointMoving, isOver, pick.Address / part.Item, pick.Placed.Pick.At),
        .. from bridle in plan.Rigging.Bridles
           from leg in bridle.Legs
           from item in bridle.Bridle.Gear
           let kind = plan.Brief.Stock.Find(item.Item)
           where kind?.Lifting is not null && leg.Pull.Value is not null
           select new Case($"bridle {bridle.Name}, leg to {leg.Point}", new Piece(bridle.Address / leg.Point / item.Item, item.Item, item.Item, kind, "rigging", default, null, new Need.AskedFor(bridle.Bridle.At)), leg.Pull, true, bridle.Address / leg.Point / item.Item, bridle.Bridle.At),
    ];

    protected override Said Say(Case found) => new(
        $"{found.Of}: {found.Carries.Value!.Value} on {found.Part.Item}, and it may carry {(found.May is { } may ? Words.Of($"{may}") : Words.FromString("nobody knows how much"))}{(found.IsOver ? " over people" : "")}.",
        "A stronger part, or two.",
        $"{found.Carries.Value!.Value} on {found.Part.Item}");

    private static IEnumerable<(PickPlan Pick, Given<PeopleBelow>? Below)> Held(Plan plan) =>
    [
        .. plan.Rigging.Trusses.SelectMany(truss => truss.Picks.Select(pick => (pick, truss.Placed.Truss.Below))),
        .. plan.Rigging.Hangs.SelectMany(hang => hang.Picks.Select(pick => (pick.Pick, hang.Placed.Flown.Below))),
    ];

    private static bool IsOver(Given<PeopleBelow>? below) => below is not { IsKnown: true, Value: PeopleBelow.Never };

    internal sealed record Case(string Of, Piece Part, Figure<Mass> Carries, bool IsOver, Address Place, Mark Written)
        : Judgement(Place, Written, MayOf(Part, IsOver) is not { } most ? Verdict.CannotBeJudged : Carries.Value!.Value.Kilograms <= most.Kilograms ? Verdict.Holds : Verdict.Fails, Carries.RestsOn.With(Doubts.Of(Part.Kind!.Lifting!.Rating.Doubt)))
    {
        /// <summary>By its hitch, half of it over people; null where nobody knows its rating.</summary>
        public Mass? May => MayOf(Part, IsOver);

        // A roundsling is choked around a chord unless somebody says better.
        private static Mass? MayOf(Piece part, bool isOver) => part.Kind!.Lifting!.Rating.Is(out var rating)
            ? rating * (part.Kind.Lifting.Made == LiftingKind.Roundsling ? Handbook.Hitches.Choke : 1) * (isOver ? 0.5 : 1)
            : null;
    }
}
