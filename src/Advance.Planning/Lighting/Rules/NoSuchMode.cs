using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>lighting/no-such-mode</c></summary>
internal sealed class NoSuchMode : Rule<NoSuchMode.Case>
{
    public override string Name => "lighting/no-such-mode";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Fixtures are to be set to a mode that their kind does not have, or nobody says to which of its modes.";

    public override string Why => "Mode and desk must agree on the number of slots, or everything behind the first fixture listens beside its own.";

    public override string Cures => "Write one of the modes of its kind, or the modes into the stock.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Lighting.Fixtures
            .Where(fixture => fixture.Piece.Kind is not null && (fixture.Modes.Count > 0 || fixture.IsWired || fixture.Row.Mode.Length > 0))
            .GroupBy(fixture => fixture.Row)
            .Select(row => CaseOf(row.First()));

    protected override Said Say(Case found)
    {
        var (item, row) = (found.Fixture.Piece.Item, found.Fixture.Row);
        var modes = string.Join(", ", found.Fixture.Modes.Select(mode => mode.Name));
        return found switch
        {
            { Verdict: Verdict.Fails } => new(
                $"Fixture {row.Numbers.ToString()}: {item} has no mode {row.Mode}.",
                $"Write one of {modes}.",
                $"{row.Mode}"),
            { Fixture.Modes.Count: 0 } => new(
                $"Fixture {row.Numbers.ToString()}: nobody knows the modes of {item}.",
                "Write the modes of its kind in the stock.",
                $"modes unknown"),
            _ => new(
                $"Fixture {row.Numbers.ToString()}: nobody says which mode of {item}.",
                $"Write one of {modes}.",
                $"mode not said"),
        };
    }

    private static Case CaseOf(FixturePlan fixture)
    {
        var isWrong = fixture is { Mode: null, Modes.Count: > 0, Row.Mode.Length: > 0 };
        return new Case(fixture, fixture.Mode is not null ? Verdict.Holds : isWrong ? Verdict.Fails : Verdict.CannotBeJudged);
    }

    internal sealed record Case(FixturePlan Fixture, Verdict Verdict)
        : Judgement(Fixture.Address, Fixture.Row.At, Verdict, Fixture.ControlDoubts);
}
