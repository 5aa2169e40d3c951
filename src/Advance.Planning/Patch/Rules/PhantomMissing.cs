using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>patch/phantom-missing</c></summary>
internal sealed class PhantomMissing : Rule<PhantomMissing.Case>
{
    public override string Name => "patch/phantom-missing";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A source that needs 48 V is on a port that gives none, or nobody knows whether it needs it.";

    public override string Why => "A microphone or DI without its 48 V is silent, and it is looked for in the cable.";

    public override string Cures => "Fix a balanced port, use a source that needs none, or write phantom for its kind in the stock.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var boxes = new PatchBoxes(plan.Brief.Gig, plan.Brief.Stock, plan.Sound);
        return plan.Patch.Lines.Where(line => line.Port is not null).Select(line => CaseOf(line, boxes));
    }

    protected override Said Say(Case found)
    {
        var (line, device) = (found.Line, found.Line.Device?.Item ?? "what is plugged in");
        return found.Verdict == Verdict.CannotBeJudged
            ? new(
                $"Channel {line.Channel}, {line.Source}: nobody knows whether {device} needs 48 V.",
                "Ask whose it is, or write phantom for its kind in the stock.",
                $"channel {line.Channel}, need unknown")
            : new(
                $"Channel {line.Channel}, {line.Source}: {device} needs 48 V, and {line.Port!.ToString()} is not a balanced input.",
                "Fix a balanced port, or use a source that needs no 48 V.",
                $"channel {line.Channel}, {line.Port!.ToString()}");
    }

    private static Case CaseOf(PatchLine line, PatchBoxes boxes)
    {
        var verdict = line.Phantom.Value switch
        {
            null => Verdict.CannotBeJudged,
            true when !boxes.IsBalanced(line.Port!) => Verdict.Fails,
            _ => Verdict.Holds,
        };
        return new Case(line, verdict);
    }

    internal sealed record Case(PatchLine Line, Verdict Verdict)
        : Judgement(Line.Address, Line.Row.At, Verdict, Line.Phantom.RestsOn);
}
