using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Naming;

namespace Advance.Planning;

/// <summary><c>lighting/fixture-nowhere</c></summary>
internal sealed class FixtureNowhere : Rule<FixtureNowhere.Case>
{
    public override string Name => "lighting/fixture-nowhere";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Fixtures are in a position that the gig does not have.";

    public override string Why => "Nobody knows where they hang, so they get neither power nor control, and no sheet shows them.";

    public override string Cures => "Write the position as it is named, with its side for a pair, or add it.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var names = plan.Lighting.Positions.Select(position => position.Name).ToList();
        return plan.Lighting.Fixtures
            .GroupBy(fixture => fixture.Row)
            .Select(row => row.First())
            .Select(fixture => new Case(fixture, Meant(fixture, names), fixture.Position is null ? Verdict.Fails : Verdict.Holds));
    }

    protected override Said Say(Case found) => new(
        $"Fixture {found.Fixture.Row.Numbers.ToString()}: there is no position {found.Fixture.Row.Position}{(found.Meant is { } meant ? $": did you mean {meant}" : "")}.",
        "Write the position as it is named, with its side for a pair, or add it.",
        $"{found.Fixture.Row.Position}");

    // The name of a pair without its side, or a slip of the finger.
    private static string? Meant(FixturePlan fixture, IReadOnlyList<string> names)
    {
        var sides = names.Where(name => name.StartsWith(fixture.Row.Position + " ", StringComparison.Ordinal)).ToList();
        return sides.Count > 0 ? string.Join(" or ", sides) : Nearest.To(fixture.Row.Position, names);
    }

    internal sealed record Case(FixturePlan Fixture, string? Meant, Verdict Verdict)
        : Judgement(Fixture.Address, Fixture.Row.At, Verdict, Doubts.None);
}
