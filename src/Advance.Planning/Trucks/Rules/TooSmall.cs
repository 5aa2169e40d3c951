using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>truck/too-small</c></summary>
internal sealed class TooSmall : Rule<TooSmall.Case>
{
    public override string Name => "truck/too-small";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The load takes more floor than the vehicles have, stacked as the stock says, or more room than there is, or something does not go in at all.";

    public override string Why => "What does not go in stays in the yard, an hour before the doors of the venue open.";

    public override string Cures => "Say in the stock what may stand on one another (stacks) and how it travels (travels), leave something out, or take a larger vehicle.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        if (plan.Load.Truck is not { } truck)
        {
            return [];
        }

        var allowed = Sum.Of("length of floor allowed by policy", "A = f / 100 · D", Publication.CommonPractice)
            .Put("f", Figure.Policy("truck floor", plan.Brief.Company.Policies.Truck.Floor.Percent))
            .Put("D", truck.Length)
            .Gives((percent, length) => length * (percent / 100));
        return [new Case(truck, allowed, VerdictOf(truck, allowed))];
    }

    protected override Said Say(Case found) => found switch
    {
        { Truck.TooLong.Count: > 0 } => new(
            $"{found.Truck.Name}: {FewNames.Of(found.Truck.TooLong)} does not go in.",
            "Take a larger vehicle, or write in the stock how it travels folded (travels).",
            $"{FewNames.Of(found.Truck.TooLong)} too large"),
        { Verdict: Verdict.CannotBeJudged, Truck.Length.Value: null } => new(
            $"{found.Truck.Name}: nobody knows how much goes in.",
            "Write the size of the load space in the stock.",
            "load space unknown"),
        { Verdict: Verdict.CannotBeJudged, Truck.Unsized.Count: > 0 } => new(
            $"{found.Truck.Name}: nobody knows the size of {FewNames.Of(found.Truck.Unsized)}.",
            "Write size, or how it travels, in the stock.",
            $"size of {found.Truck.Unsized.Count} kinds unknown"),
        { Verdict: Verdict.CannotBeJudged } => new(
            $"{found.Truck.Name}: {found.Floor} of floor wanted with nothing on top of {FewNames.Of(found.Truck.Unstacked)}, {found.Most} allowed.",
            "Say in the stock how many may stand on one another (stacks).",
            $"{found.Floor} of {found.Most}, {found.Truck.Unstacked.Count} kinds unstacked"),
        _ => new(
            $"{found.Truck.Name}: the load takes {found.Floor} of floor, {found.Most} allowed.",
            "Leave something out, or take a larger vehicle.",
            $"{found.Floor} of {found.Most}"),
    };

    private static Verdict VerdictOf(TruckLoad truck, Figure<Length> allowed)
    {
        if (truck.TooLong.Count > 0 || truck.Volume.AtMost(truck.Space) == Verdict.Fails)
        {
            return Verdict.Fails;
        }

        var byFloor = truck.Floor.AtMost(allowed);
        return byFloor == Verdict.Fails && truck.Unstacked.Count > 0 ? Verdict.CannotBeJudged : byFloor;
    }

    internal sealed record Case(TruckLoad Truck, Figure<Length> Allowed, Verdict Verdict)
        : Judgement(Truck.Where, Truck.At, Verdict, Truck.Floor.RestsOn.With(Allowed.RestsOn))
    {
        public Words Floor => Truck.Floor.Value is { } length ? Words.Of($"{length}") : "more";

        public Words Most => Allowed.Value is { } length ? Words.Of($"{length}") : "not known";
    }
}
