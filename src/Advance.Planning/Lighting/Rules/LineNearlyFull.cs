using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>lighting/line-nearly-full</c></summary>
internal sealed class LineNearlyFull : Rule<LineNearlyFull.Case>
{
    public override string Name => "lighting/line-nearly-full";

    public override Severity Severity => Severity.Note;

    public override string Catches => "A line of lighting control drives more units than are planned on one, though not more than the standard allows.";

    public override string Why => "The standard's limit is for perfect leads; guest fixtures and old ones want some room.";

    public override string Cures => "Put a splitter in, or move fixtures to another universe.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Lighting.Lines
            .Where(line => line.Units.AtMost(line.Most) == Verdict.Holds)
            .Select(line => new Case(line, line.Units.AtMost(line.Planned)));

    protected override Said Say(Case found) => new(
        $"Control of {found.Line.Name}: {found.Line.Units.Value ?? 0} unit loads on one line, {found.Line.Planned.Value ?? 0} planned at most.",
        "Put a splitter in the stock or bring one, or move fixtures to another universe.",
        $"{found.Line.Units.Value ?? 0} of {found.Line.Planned.Value ?? 0} planned");

    internal sealed record Case(ControlLine Line, Verdict Verdict)
        : Judgement(Line.Address, Line.Fixtures[0].Row.At, Verdict, Line.Units.RestsOn);
}
