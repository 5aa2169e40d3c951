using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/generator-mean-load</c></summary>
internal sealed class GeneratorMeanLoad : Rule<GeneratorMeanLoad.Case>
{
    public override string Name => "power/generator-mean-load";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Over its hours a generator gives more on average than its prime power allows.";

    public override string Why => "Prime power is meant for a load that goes up and down; at a steady full load the set overheats.";

    public override string Cures => "Hire a larger set, one rated for continuous power, or a second one to share the hours.";

    public override Publication Source => Iso8528.Prime;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from set in plan.Power.Generators
        where set.Mean?.Value is not null
        select new Case(set, Figure.Policy("generator-mean", Ratio.FromPercent(plan.Brief.Company.Policies.GeneratorMean)));

    protected override Said Say(Case found) => new(
        $"{found.Set.Service.Name}: {found.Set.Mean!.Value!.Value} of what its engine gives on average over its hours, {found.Most.Value!.Value} allowed.",
        "Hire a larger set, one rated for continuous power, or a second one.",
        $"{found.Set.Mean!.Value!.Value} of {found.Most.Value!.Value}");

    internal sealed record Case(GeneratorPlan Set, Figure<Ratio> Most)
        : Judgement(Set.Service.Address / "generator" / "mean", Set.Service.At, Set.Mean!.AtMost(Most), Set.Mean!.RestsOn);
}
