using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>patch/no-port-left</c></summary>
internal sealed class NoPortLeft : Rule<NoPortLeft.Case>
{
    public override string Name => "patch/no-port-left";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "An input has no port on any stage box: all are taken, or the one that was fixed by hand is taken or does not exist.";

    public override string Why => "A line without a port is not heard, and is found at line check, when there is no time to fetch a box.";

    public override string Cures => "Bring another or a larger stage box, drop a line, or fix another port.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Patch.Lines.Select(line => CaseOf(line, plan.Patch.Ports));

    protected override Said Say(Case found)
    {
        var (line, ports) = (found.Line, found.Ports.Value ?? 0);
        if (found.Verdict == Verdict.CannotBeJudged)
        {
            return new(
                $"Channel {line.Channel}, {line.Source}: no port, for nobody knows how many there are.",
                "Give the stage box an item whose ports the stock knows.",
                $"channel {line.Channel}, ports unknown");
        }

        return line.Why is Reason.Fixed
            ? new(
                $"Channel {line.Channel}, {line.Source}: the port fixed by hand is taken or does not exist.",
                "Fix a free port, or leave it out and let one be chosen.",
                $"channel {line.Channel}, fixed port refused")
            : new(
                $"Channel {line.Channel}, {line.Source}: no port left, all {ports} are taken.",
                "Bring another or a larger stage box, or drop a line.",
                $"channel {line.Channel}, {ports} ports");
    }

    private static Case CaseOf(PatchLine line, Figure<int> ports)
    {
        var verdict = line.Port is not null ? Verdict.Holds : ports.Value is null ? Verdict.CannotBeJudged : Verdict.Fails;
        return new Case(line, ports, verdict);
    }

    internal sealed record Case(PatchLine Line, Figure<int> Ports, Verdict Verdict)
        : Judgement(Line.Address, Line.Row.At, Verdict, Ports.RestsOn);
}
