using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>cable/no-way</c></summary>
internal sealed class NoWay : Rule<NoWay.Case>
{
    public override string Name => "cable/no-way";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "No named way comes near an end that stands off the stage, or nobody knows how large the stage is: leads are measured along a straight line.";

    public override string Why => "Leads go round walls, tables and doors; along a straight line they come out too short.";

    public override string Cures => "Name the way in cable-ways, with its corners and how it is laid.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var measured = plan.Cables.Runs.Where(run => run.Route is { Legs.Count: > 0 }).ToList();
        if (!plan.Cables.KnowsDeck)
        {
            return WithoutStage(plan, [.. measured.Where(run => run.Route!.IsEstimated)]);
        }

        return measured
            .GroupBy(run => run.Route!.IsEstimated ? OffStage(run).Port.Device : run.Link.To.Port.Device, StringComparer.Ordinal)
            .Select(runs => CaseOf(runs.Key, [.. runs]));
    }

    protected override Said Say(Case found)
    {
        var runs = RunNames.Count(found.Lost.Count);
        var lead = RunNames.Of(found.Lost);
        return found.Verdict == Verdict.CannotBeJudged
            ? new(
                $"Nobody knows how large the stage is: {runs} ({lead}) measured along a straight line.",
                "Write the size of the stage.",
                $"{runs}, stage unknown")
            : new(
                $"{found.Device}: no named way comes near, {runs} ({lead}) measured along a straight line.",
                "Name the way in cable-ways, with its corners and how it is laid.",
                $"{runs} without a way");
    }

    private static IEnumerable<Case> WithoutStage(Plan plan, IReadOnlyList<Run> lost)
    {
        if (lost.Count > 0)
        {
            var stage = plan.Stage.Stages.Count > 0 ? plan.Stage.Stages[0] : null;
            yield return new Case("", lost, Address.Of("cable") / "stage", stage?.At ?? lost[0].Link.At, Verdict.CannotBeJudged, Doubts.Of(stage?.Size.Doubt));
        }
    }

    private static Case CaseOf(string device, IReadOnlyList<Run> runs)
    {
        IReadOnlyList<Run> lost = [.. runs.Where(run => run.Route!.IsEstimated)];
        var at = (lost.Count > 0 ? lost : runs).Min(run => run.Link.At);
        return new Case(device, lost, Address.Of("cable") / device, at, lost.Count > 0 ? Verdict.Fails : Verdict.Holds, Doubts.None);
    }

    // The end that the straight line begins or ends at; of one line from end to end, the one it was drawn to.
    private static LinkEnd OffStage(Run run) =>
        run.Route!.Legs is [{ IsEstimated: true }, _, ..] ? run.Link.From : run.Link.To;

    internal sealed record Case(string Device, IReadOnlyList<Run> Lost, Address Where, Mark At, Verdict Verdict, Doubts RestsOn)
        : Judgement(Where, At, Verdict, RestsOn);
}
