using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>cable/surplus</c></summary>
internal sealed class Surplus : Rule<Surplus.Case>
{
    public override string Name => "cable/surplus";

    public override Severity Severity => Severity.Note;

    public override string Catches => "Much of what is laid is left over: more of what is needed than the company wants, and not just a metre or two.";

    public override string Why => "It must lie somewhere: a coil in the way, and a coiled mains lead under load gets hot.";

    public override string Cures => "Say where it is coiled, lay mains in loose loops, or buy leads of the length that is missing.";

    public override Publication Source => Publication.CommonPractice;

    // One note for each kind of signal, not one for each lead.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var policies = plan.Brief.Company.Policies.Cables;
        return plan.Cables.Runs.Where(run => run.Leads.Count > 0)
            .GroupBy(run => run.Link.Carries, StringComparer.Ordinal)
            .Select(runs => CaseOf(runs.Key, [.. runs.Where(run => IsMuch(run, policies))], runs.First()));
    }

    protected override Said Say(Case found)
    {
        var most = found.Runs.MaxBy(run => run.Surplus.Value!.Value)!;
        return new(
            $"{RunNames.Of(found.Runs)} ({found.Carries}): much left over, {most.Surplus.Value!.Value} of {most.Label} at most, where {most.Needed.Value!.Value} is needed.",
            found.Carries == "mains" ? "Lay it in loose loops, never coiled." : $"Coil it at {most.LeftOverAt.Port.Device}, or buy leads of the length that is missing.",
            $"{RunNames.Count(found.Runs.Count)} of {found.Carries}, {most.Surplus.Value!.Value} at most");
    }

    private static bool IsMuch(Run run, CablePolicies policies) =>
        run.Surplus.Value is { } surplus && run.Needed.Value is { } needed
        && surplus > policies.SurplusLength && surplus > needed * (policies.SurplusShare / 100);

    private static Case CaseOf(string carries, IReadOnlyList<Run> runs, Run any)
    {
        var doubts = runs.Aggregate(Doubts.None, (sum, run) => sum.With(run.Surplus.RestsOn));
        return new Case(carries, runs, (runs.Count > 0 ? runs[0] : any).Link.At, runs.Count > 0 ? Verdict.Fails : Verdict.Holds, doubts);
    }

    internal sealed record Case(string Carries, IReadOnlyList<Run> Runs, Mark At, Verdict Verdict, Doubts RestsOn)
        : Judgement(Address.Of("cable") / Carries, At, Verdict, RestsOn);
}
