using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/nearly-full</c></summary>
internal sealed class NearlyFull : Rule<NearlyFull.Case>
{
    public override string Name => "power/nearly-full";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A circuit, a distribution or a service carries more in use than the share of its rating that the company allows itself.";

    public override string Why => "One more lamp, one more kettle, and it trips.";

    public override string Cures => "Move loads to another circuit or service, ask for a larger one, or have what shares it switched off.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var share = Figure.Policy("circuit-use", plan.Brief.Company.Policies.CircuitUse);
        return
            from point in plan.Power.Limits
            from use in point.Legs
            where use.InUse.Value is not null && point.Limit.Value is not null
            select new Case(point, use, Comfort(point, share));
    }

    protected override Said Say(Case found) => new(
        $"{found.Point.Name}: {found.Use.InUse.Value!.Value} in use ({StateShares.Word(found.Use.State)}) of {found.Point.Limit.Value!.Value}; more than {found.Most.Value!.Value} is a concern{found.Point.SharedWords}.",
        "Move loads to another circuit or service, or have what shares it switched off.",
        $"{found.Use.InUse.Value!.Value} of {found.Point.Limit.Value!.Value}");

    private static Figure<ElectricCurrent> Comfort(SupplyPoint point, Figure<double> share) =>
        Sum.Of($"{point.Name}, carried with ease", "I = s / 100 · r", Publication.CommonPractice)
            .Put("s", share)
            .Put("r", point.Limit)
            .Gives((part, limit) => limit * (part / 100));

    // What is overloaded is told by another rule.
    private static Verdict Judge(SupplyPoint point, LegUse use, Figure<ElectricCurrent> most) =>
        use.InUse.AtMost(most) == Verdict.Holds || use.InUse.AtMost(point.Limit) == Verdict.Fails ? Verdict.Holds : Verdict.Fails;

    internal sealed record Case(SupplyPoint Point, LegUse Use, Figure<ElectricCurrent> Most)
        : Judgement(Point.Address, Point.At, Judge(Point, Use, Most), Use.InUse.RestsOn.With(Point.Limit.RestsOn));
}
