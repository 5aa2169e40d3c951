using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>lighting/fixture-twice</c></summary>
internal sealed class FixtureTwice : Rule<FixtureTwice.Case>
{
    public override string Name => "lighting/fixture-twice";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Two fixtures have the same number on the desk.";

    public override string Why => "The desk knows one of them, and labels and focus notes are for both.";

    public override string Cures => "Give one of them a free number.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var seen = new HashSet<int>();
        foreach (var fixture in plan.Lighting.Fixtures)
        {
            yield return new Case(fixture, seen.Add(fixture.Number) ? Verdict.Holds : Verdict.Fails);
        }
    }

    protected override Said Say(Case found) => new(
        $"Fixture {found.Fixture.Number} is there twice.",
        "Give one of them a free number.",
        $"{found.Fixture.Number} twice");

    internal sealed record Case(FixturePlan Fixture, Verdict Verdict)
        : Judgement(Fixture.Address, Fixture.Row.At, Verdict, Doubts.None);
}
