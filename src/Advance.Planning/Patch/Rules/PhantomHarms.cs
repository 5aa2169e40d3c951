using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary><c>patch/phantom-harms</c></summary>
internal sealed class PhantomHarms : Rule<PhantomHarms.Case>
{
    public override string Name => "patch/phantom-harms";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A source that 48 V may damage is plugged into a port that carries 48 V for another act.";

    public override string Why => "At the changeover the 48 V is still on, and an old ribbon does not survive being plugged in.";

    public override string Cures => "Fix one of the two to another port, or write into the changeover that 48 V goes off first.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var byPort = plan.Patch.Lines.Where(line => line.Port is not null).ToLookup(line => line.Port);
        foreach (var line in plan.Patch.Lines.Where(line => line.Port is not null && line.Device?.Kind?.Phantom == Phantom.Harmful))
        {
            var others = byPort[line.Port].Where(other => other.Act != line.Act).ToList();
            var other = others.FirstOrDefault(other => other.Phantom.Value == true) ?? others.FirstOrDefault(other => other.Phantom.Value is null);
            var verdict = other is null ? Verdict.Holds : other.Phantom.Value is null ? Verdict.CannotBeJudged : Verdict.Fails;
            yield return new Case(line, other, verdict);
        }
    }

    protected override Said Say(Case found)
    {
        var (line, other) = (found.Line, found.Other!);
        return found.Verdict == Verdict.CannotBeJudged
            ? new(
                $"Channel {line.Channel}, {line.Source}: 48 V may damage it, and nobody knows whether {line.Port!.ToString()} carries that for {other.Act ?? "all acts"}.",
                $"Ask whether {other.Source} needs 48 V, or fix one of the two to another port.",
                $"{line.Port!.ToString()}, other need unknown")
            : new(
                $"Channel {line.Channel}, {line.Source}: 48 V may damage it, and {line.Port!.ToString()} carries that for {other.Source} of {other.Act ?? "all acts"}.",
                "Fix one of the two to another port, or have 48 V switched off before it is plugged in.",
                $"{line.Port!.ToString()}, 48 V for {other.Source}");
    }

    internal sealed record Case(PatchLine Line, PatchLine? Other, Verdict Verdict)
        : Judgement(Line.Address, Line.Row.At, Verdict, Other?.Phantom.RestsOn ?? Doubts.None);
}
