using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>cable/mic-line-long</c></summary>
internal sealed class MicLineLong : Rule<MicLineLong.Case>
{
    private static readonly Length Most = Length.FromMeters(100);

    public override string Name => "cable/mic-line-long";

    public override Severity Severity => Severity.Note;

    public override string Catches => "An analogue line is longer than 100 m.";

    public override string Why => "Capacitance takes the highest notes: 100 m of 100 pF a metre behind 200 ohm end at 80 kHz, and twice as much at 40 kHz.";

    public override string Cures => "Put a stage box nearer to it.";

    public override Publication Source { get; } = new("f = 1 / (2 π Z C), cut-off of a cable with 100 pF/m; the limit itself is common practice", "", "", Standing.CommonPractice);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Cables.Runs.Where(run => run.Link.Carries is "mic-line" or "line").Select(CaseOf).OfType<Case>();

    protected override Said Say(Case found) => new(
        $"{found.Run.Label}: {found.Long.Value!.Value} of analogue line, more than {Most}.",
        "Put a stage box nearer to it.",
        $"{found.Long.Value!.Value}, {Most} at most");

    // Where nobody knows how long it is, the end that is unknown was said already.
    private static Case? CaseOf(Run run)
    {
        var length = run.MadeUp.Value is null ? run.Needed : run.MadeUp;
        return length.Value is null ? null : new Case(run, length, length.AtMost(new Figure<Length>(Most, Domain.Facts.Doubts.None, Reason.Derived.It)));
    }

    internal sealed record Case(Run Run, Figure<Length> Long, Verdict Verdict) : Judgement(Run.Address, Run.Link.At, Verdict, Long.RestsOn);
}
