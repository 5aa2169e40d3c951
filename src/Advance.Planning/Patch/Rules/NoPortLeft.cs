using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>patch/no-port-left</c></summary>
internal sealed class NoPortLeft : Rule<NoPortLeft.Case>
{
    public override string Name => "patch/no-port-left";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "An input has no port on any stage box: all are taken, or there is no box.";

    public override string Why => "A line without a port is not heard, and is found at line check, when there is no time to fetch a box.";

    public override string Cures => "Bring another or a larger stage box, or drop a line.";

    public override Publication Source => Publication.Arithmetic;

    // Without any box the first line speaks for all.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Patch.Lines.Take(plan.Patch.HasBoxes ? plan.Patch.Lines.Count : 1).Select(line => CaseOf(line, plan.Patch));

    protected override Said Say(Case found)
    {
        var (line, ports) = (found.Line, found.Patch.Ports.Value ?? 0);
        return found switch
        {
            { Patch.HasBoxes: false } => new(
                $"{found.Patch.Lines.Count} lines, and no stage box or desk to patch them to.",
                "Write the stage boxes, or the desk, under sound.",
                $"{found.Patch.Lines.Count} lines, no box"),
            { Verdict: Verdict.CannotBeJudged } => new(
                $"Channel {line.Channel}, {line.Source}: no port, for nobody knows how many there are.",
                "Give the stage box an item whose ports the stock knows.",
                $"channel {line.Channel}, ports unknown"),
            _ => new(
                $"Channel {line.Channel}, {line.Source}: no port left, all {ports} are taken.",
                "Bring another or a larger stage box, or drop a line.",
                $"channel {line.Channel}, {ports} ports"),
        };
    }

    private static Case CaseOf(PatchLine line, PatchPlan patch)
    {
        var verdict = line.Port is not null ? Verdict.Holds : patch.HasBoxes && patch.Ports.Value is null ? Verdict.CannotBeJudged : Verdict.Fails;
        return new Case(line, patch, verdict);
    }

    internal sealed record Case(PatchLine Line, PatchPlan Patch, Verdict Verdict)
        : Judgement(Line.Address, Line.Row.At, Verdict, Patch.Ports.RestsOn);
}
