using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>truck/little-to-spare</c></summary>
internal sealed class LittleToSpare : Rule<LittleToSpare.Case>
{
    public override string Name => "truck/little-to-spare";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The load is within what the vehicles may carry, but above the share of it that policy allows.";

    public override string Why => "What is added on the last day, wet drapes and three people's bags are in no list.";

    public override string Cures => "Leave something out, or weigh the loaded vehicle before it leaves.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Load is { Truck: { Payload.Value: { } payload } truck, Gross.Value: { } gross } && gross <= payload * (1 + 1e-9)
            ? [new Case(truck, gross, plan.Load.Gross.AtMost(Allowed(plan, truck)), Allowed(plan, truck))]
            : [];

    protected override Said Say(Case found) => new(
        $"{found.Truck.Name}: the load weighs {found.Gross}, {found.Allowed.Value ?? Mass.Zero} allowed by policy.",
        $"Leave out {found.Gross - (found.Allowed.Value ?? Mass.Zero)}, or weigh the loaded vehicle before it leaves.",
        $"{found.Gross} of {found.Allowed.Value ?? Mass.Zero}");

    private static Figure<Mass> Allowed(Plan plan, TruckLoad truck) =>
        Sum.Of("load allowed by policy", "A = f / 100 · P", Publication.CommonPractice)
            .Put("f", Figure.Policy("truck payload", plan.Brief.Company.Policies.Truck.Payload.Percent))
            .Put("P", truck.Payload)
            .Gives((percent, payload) => payload * (percent / 100));

    internal sealed record Case(TruckLoad Truck, Mass Gross, Verdict Verdict, Figure<Mass> Allowed)
        : Judgement(Truck.Where, Truck.At, Verdict, Allowed.RestsOn);
}
