using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/generator-step</c></summary>
internal sealed class GeneratorStep : Rule<GeneratorStep.Case>
{
    public override string Name => "power/generator-step";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A device in the order of switching on puts more on a generator at once than the largest step it takes.";

    public override string Why => "Its speed and its voltage dip, what is on already restarts, and the set may trip.";

    public override string Cures => "Share the load over more devices and close them one after the other, or hire a larger set.";

    public override Publication Source => Publication.CommonPractice;

    // The largest step tells for all of a set.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from set in plan.Power.Generators
        where set.MostStep?.Value is not null
        let largest = set.Steps.Where(step => step.Share.Value is not null).MaxBy(step => step.Share.Value!.Value.Percent)
        where largest is not null
        select new Case(set, largest);

    protected override Said Say(Case found) => new(
        $"{found.Set.Service.Name}: {found.Step.Share.Value!.Value} of its rating comes on with step {found.Step.On.Number}, {found.Step.On.Device.Name}; {found.Set.MostStep!.Value!.Value} is the largest step it takes.",
        "Share the load over more devices and close them one after the other.",
        $"{found.Step.Share.Value!.Value} of {found.Set.MostStep!.Value!.Value}");

    internal sealed record Case(GeneratorPlan Set, LoadStep Step)
        : Judgement(Set.Service.Address / "generator" / "step", Set.Service.At, Step.Share.AtMost(Set.MostStep!), Step.Share.RestsOn.With(Set.MostStep!.RestsOn));
}
