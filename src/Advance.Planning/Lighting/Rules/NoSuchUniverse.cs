using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>lighting/no-such-universe</c></summary>
internal sealed class NoSuchUniverse : Rule<NoSuchUniverse.Case>
{
    public override string Name => "lighting/no-such-universe";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Fixtures were given an address in a universe that the desk has no output for.";

    public override string Why => "The line would start at a connector that is not there.";

    public override string Cures => "Give an address in a universe that the desk sends, or bring a desk with more outputs.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Lighting.DeskUniverses is not { } universes
            ? []
            : plan.Lighting.Fixtures
                .Where(fixture => fixture is { Why: Reason.Fixed, At: not null })
                .GroupBy(fixture => fixture.Row)
                .Select(row => row.First())
                .Select(fixture => new Case(fixture, universes, fixture.At!.Value.Universe <= universes ? Verdict.Holds : Verdict.Fails));

    protected override Said Say(Case found) => new(
        $"Fixture {found.Fixture.Row.Numbers.ToString()}: universe {found.Fixture.At!.Value.Universe}, and the desk sends {found.Universes}.",
        "Give an address in a universe that the desk sends, or bring a desk with more outputs.",
        $"universe {found.Fixture.At.Value.Universe} of {found.Universes}");

    internal sealed record Case(FixturePlan Fixture, int Universes, Verdict Verdict)
        : Judgement(Fixture.Address, Fixture.Row.At, Verdict, Fixture.ControlDoubts);
}
