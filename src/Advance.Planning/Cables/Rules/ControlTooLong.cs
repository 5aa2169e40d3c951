using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>cable/control-too-long</c></summary>
internal sealed class ControlTooLong : Rule<ControlTooLong.Case>
{
    private static readonly Length Most = Length.FromMeters(300);

    public override string Name => "cable/control-too-long";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A line of lighting control is longer from its desk or splitter to its last fixture than 300 m.";

    public override string Why => "The signal wears out along the line, and fixtures at its end flicker or stop.";

    public override string Cures => "Put a splitter into the line, or start a second line.";

    // Published limits run from 100 m to a mile; 300 m is the cautious one.
    public override Publication Source { get; } = new("lighting control over EIA-485 (ANSI E1.11), trade rule of 300 m before a repeater", "", "", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var control = plan.Cables.Runs.Where(run => run.Link.Carries == "lighting-control").ToList();
        var into = control.ToLookup(run => run.Link.To.Port.Device, StringComparer.Ordinal);
        var goesOn = control.Where(run => run.Link.From.Port.Number is null).Select(run => run.Link.From.Port.Device).ToHashSet(StringComparer.Ordinal);
        return control.Where(run => !goesOn.Contains(run.Link.To.Port.Device)).Select(run => CaseOf(Back(run, into))).OfType<Case>();
    }

    protected override Said Say(Case found) => new(
        $"{found.Line[0].Label} to {found.Line[^1].Link.To.Port.Device}: {found.Long.Value!.Value} of lighting control in one line, {Most} at most.",
        "Put a splitter into the line, or start a second line.",
        $"{found.Long.Value!.Value}, {Most} at most");

    // From the last run of a line to its first: a splitter's own outputs are numbered, and begin a line of their own.
    private static List<Run> Back(Run last, ILookup<string, Run> into)
    {
        var line = new List<Run> { last };
        while (line[0].Link.From.Port.Number is null && into[line[0].Link.From.Port.Device].FirstOrDefault() is { } before && !line.Contains(before))
        {
            line.Insert(0, before);
        }

        return line;
    }

    // Where nobody knows how long it is, the end that is unknown was said already.
    private static Case? CaseOf(List<Run> line)
    {
        var total = Sum.Of("length of the line", "ℓ = Σ ℓᵢ", Publication.Arithmetic)
            .PutAll("ℓᵢ", line.Select(run => run.MadeUp.Value is null ? run.Needed : run.MadeUp))
            .Gives(terms => terms.Values.Aggregate(Length.Zero, (sum, length) => sum + length));
        return total.Value is null ? null : new Case(line, total, total.AtMost(new Figure<Length>(Most, Domain.Facts.Doubts.None, Reason.Derived.It)));
    }

    internal sealed record Case(IReadOnlyList<Run> Line, Figure<Length> Long, Verdict Verdict)
        : Judgement(Line[0].Address, Line[0].Link.At, Verdict, Long.RestsOn);
}
