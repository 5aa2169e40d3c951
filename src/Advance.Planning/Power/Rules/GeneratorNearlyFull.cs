using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/generator-nearly-full</c></summary>
internal sealed class GeneratorNearlyFull : Rule<GeneratorNearlyFull.Case>
{
    public override string Name => "power/generator-nearly-full";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The worst line of a generator carries more of its rated current than the company allows itself.";

    public override string Why => "Nothing is left for heat, peaks and the one thing more that somebody plugs in.";

    public override string Cures => "Hire a larger set, spread the loads over its lines, or take loads off it.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Generators.Where(set => set.LineShare.Value is not null).Select(set => new Case(set));

    protected override Said Say(Case found) => new(
        $"{found.Set.Service.Name}: {found.Set.LineShare.Value!.Value} of the rated current on its worst line ({found.Set.Service.Worst.StateInWords}); more than {found.Set.LineWithEase.Value!.Value} is a concern{found.Set.Service.SharedWords}.",
        "Hire a larger set, spread the loads over its lines, or take loads off it.",
        $"{found.Set.Service.Worst.InUse.Value!.Value} of {found.Set.LineWithEase.Value!.Value}");

    // What is overloaded is told by another rule.
    private static Verdict Judge(GeneratorPlan set) =>
        set.Service.Worst.InUse.AtMost(set.Line) == Verdict.Fails ? Verdict.Holds : set.Service.Worst.InUse.AtMost(set.LineWithEase);

    internal sealed record Case(GeneratorPlan Set)
        : Judgement(Set.Service.Address / "generator" / "with-ease", Set.Service.At, Judge(Set), Set.LineShare.RestsOn);
}
