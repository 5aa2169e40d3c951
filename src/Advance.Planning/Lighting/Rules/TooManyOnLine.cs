using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>lighting/too-many-on-line</c></summary>
internal sealed class TooManyOnLine : Rule<TooManyOnLine.Case>
{
    public override string Name => "lighting/too-many-on-line";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A line of lighting control drives more units than the standard allows.";

    public override string Why => "Beyond 32 unit loads the signal sinks, and fixtures at the far end flicker or go their own way.";

    public override string Cures => "Put a splitter in, or move fixtures to another universe.";

    public override Publication Source => AnsiE111.UnitLoads;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Lighting.Lines.Select(line => new Case(line, line.Units.AtMost(line.Most)));

    protected override Said Say(Case found) => new(
        $"Control of {found.Line.Name}: {found.Line.Units.Value ?? 0} unit loads on one line, {found.Line.Most.Value ?? 0} allowed.",
        "Put a splitter in the stock or bring one, or move fixtures to another universe.",
        $"{found.Line.Units.Value ?? 0} unit loads");

    internal sealed record Case(ControlLine Line, Verdict Verdict)
        : Judgement(Line.Address, Line.Fixtures[0].Row.At, Verdict, Line.Units.RestsOn);
}
