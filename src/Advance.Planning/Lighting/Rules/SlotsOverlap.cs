using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>lighting/slots-overlap</c></summary>
internal sealed class SlotsOverlap : Rule<SlotsOverlap.Case>
{
    public override string Name => "lighting/slots-overlap";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Two fixtures listen to the same slots, and are not twins: not the same kind, mode and address.";

    public override string Why => "One fader moves both, and a colour of the one is the shutter of the other.";

    public override string Cures => "Give one of them another address, or leave it out and let one be chosen.";

    public override Publication Source => AnsiE111.Slots;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var fixtures = plan.Lighting.Fixtures.Where(fixture => fixture.Slots is not null).ToList();
        for (var index = 0; index < fixtures.Count; index++)
        {
            var other = fixtures.Take(index).FirstOrDefault(other => Overlap(fixtures[index], other));
            yield return new Case(fixtures[index], other, other is null ? Verdict.Holds : Verdict.Fails);
        }
    }

    protected override Said Say(Case found) => new(
        $"{found.Fixture.Name} at {found.Fixture.At!.Value.ToString()} with {found.Fixture.Slots!.Value.Count} slots overlaps {found.Other!.Name} at {found.Other.At!.Value.ToString()} with {found.Other.Slots!.Value.Count}.",
        "Give one of them another address, or leave it out and let one be chosen.",
        $"{found.Other.At.Value.ToString()} and {found.Fixture.At.Value.ToString()}");

    // Two that were given one address by hand, and are alike, are meant to do the same.
    private static bool Overlap(FixturePlan one, FixturePlan other) =>
        one.At!.Value.Universe == other.At!.Value.Universe
        && one.Slots!.Value.Overlaps(other.Slots!.Value)
        && !(one.At == other.At && one.Piece.Item == other.Piece.Item && one.Mode == other.Mode && one.Row != other.Row);

    internal sealed record Case(FixturePlan Fixture, FixturePlan? Other, Verdict Verdict)
        : Judgement(Fixture.Address, Fixture.Row.At, Verdict, Fixture.ControlDoubts.With(Other?.ControlDoubts ?? Doubts.None));
}
