using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>cable/all-used</c></summary>
internal sealed class AllUsed : Rule<AllUsed.Case>
{
    public override string Name => "cable/all-used";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The shop owns leads that would do, but all that are ready are used by other runs.";

    public override string Why => "What cannot be connected stays silent or dark, and is found out on site.";

    public override string Cures => "Hire more (a row in extras, from: hire and who), or do without a run.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Cables.Runs.Where(run => run.Gap is RunGap.None or RunGap.AllTaken)
            .GroupBy(LeadNeed.Of, StringComparer.Ordinal)
            .Select(runs => CaseOf([.. runs]));

    protected override Said Say(Case found)
    {
        var (left, first) = (found.Left.Count, found.Left[0]);
        return new(
            $"{RunNames.Of(found.Left)}: {left} of {RunNames.Count(found.Runs)} of {LeadNeed.Of(first)} without leads, all that reach are used.",
            $"Hire more: {first.Label} needs {first.Needed.Value!.Value}.",
            $"{left} of {RunNames.Count(found.Runs)} without leads");
    }

    private static Case CaseOf(IReadOnlyList<Run> runs)
    {
        IReadOnlyList<Run> left = [.. runs.Where(run => run.Gap == RunGap.AllTaken)];
        var doubts = left.Aggregate(Doubts.None, (sum, run) => sum.With(run.Needed.RestsOn));
        var first = left.Count > 0 ? left[0] : runs[0];
        return new Case(runs.Count, left, first.Address, first.Link.At, left.Count > 0 ? Verdict.Fails : Verdict.Holds, doubts);
    }

    internal sealed record Case(int Runs, IReadOnlyList<Run> Left, Address Where, Mark At, Verdict Verdict, Doubts RestsOn)
        : Judgement(Where, At, Verdict, RestsOn);
}
