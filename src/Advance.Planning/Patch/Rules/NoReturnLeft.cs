using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>patch/no-return-left</c></summary>
internal sealed class NoReturnLeft : Rule<NoReturnLeft.Case>
{
    public override string Name => "patch/no-return-left";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A mix has no output on any stage box: all are taken, or there is no box.";

    public override string Why => "Somebody on stage hears nothing, which is found at sound check.";

    public override string Cures => "Bring a stage box with more outputs, drop a mix, or feed loudspeakers from elsewhere.";

    public override Publication Source => Publication.Arithmetic;

    // Without any box the lines say so; where there are none, the first mix speaks for all.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var patch = plan.Patch;
        return patch.Returns.Take(patch.HasBoxes ? patch.Returns.Count : patch.Lines.Count == 0 ? 1 : 0).Select(mix => CaseOf(mix, patch));
    }

    protected override Said Say(Case found)
    {
        var (mix, ports) = (found.Mix, found.Patch.ReturnPorts.Value ?? 0);
        return found switch
        {
            { Patch.HasBoxes: false } => new(
                $"{found.Patch.Returns.Count} mixes, and no stage box or desk that they could come out of.",
                "Write the stage boxes, or the desk, under sound.",
                $"{found.Patch.Returns.Count} mixes, no box"),
            { Verdict: Verdict.CannotBeJudged } => new(
                $"Mix {mix.Number}, {mix.Row.For}: no output, for nobody knows how many there are.",
                "Give the stage box an item whose ports the stock knows.",
                $"mix {mix.Number}, outputs unknown"),
            _ => new(
                $"Mix {mix.Number}, {mix.Row.For}: no output left, all {ports} are taken.",
                "Bring a stage box with more outputs, or drop a mix.",
                $"mix {mix.Number}, {ports} outputs"),
        };
    }

    private static Case CaseOf(PatchReturn mix, PatchPlan patch)
    {
        var verdict = mix.Port is not null ? Verdict.Holds : patch.HasBoxes && patch.ReturnPorts.Value is null ? Verdict.CannotBeJudged : Verdict.Fails;
        return new Case(mix, patch, verdict);
    }

    internal sealed record Case(PatchReturn Mix, PatchPlan Patch, Verdict Verdict)
        : Judgement(Mix.Address, Mix.Row.At, Verdict, Patch.ReturnPorts.RestsOn);
}
