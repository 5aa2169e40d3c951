using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>cable/crosses-no-go</c></summary>
internal sealed class CrossesNoGo : Rule<CrossesNoGo.Case>
{
    public override string Name => "cable/crosses-no-go";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A lead lies across an exit, a hydrant or a lane that the venue keeps clear, not on a way that somebody named, because there is no other.";

    public override string Why => "Whoever runs for that exit in the dark falls over it.";

    public override string Cures => "Name a way round it, or over it with a ramp that the venue has agreed to, or move what the lead goes to.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var laid = plan.Cables.Runs.Where(run => run.Route is { Legs.Count: > 0 }).ToList();
        return laid.Count == 0 ? [] : plan.Cables.Keep.Select(keep => CaseOf(keep, laid));
    }

    protected override Said Say(Case found)
    {
        var (what, runs) = (found.Keep.Clear.What, RunNames.Count(found.Across.Count));
        return found.Verdict == Verdict.CannotBeJudged
            ? new(
                $"{what}: nobody knows where, so that no lead was kept off it.",
                "Write its place.",
                $"{what}, place unknown")
            : new(
                $"{what}: {runs} across it ({RunNames.Of(found.Across)}), none allowed.",
                "Name a way round it, or over it with a ramp that the venue has agreed to.",
                $"{runs} across {what}");
    }

    private static Case CaseOf(NoGo keep, IReadOnlyList<Run> laid)
    {
        IReadOnlyList<Run> across = [.. laid.Where(run => run.Route!.Trespasses.Contains(keep.Clear.What))];
        var verdict = keep.Covers is null ? Verdict.CannotBeJudged : across.Count > 0 ? Verdict.Fails : Verdict.Holds;
        return new Case(keep, across, verdict);
    }

    internal sealed record Case(NoGo Keep, IReadOnlyList<Run> Across, Verdict Verdict)
        : Judgement(Address.Of("cable") / Keep.Clear.What, Keep.Clear.At, Verdict, Keep.RestsOn);
}
