using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>lighting/over-512</c></summary>
internal sealed class Over512 : Rule<Over512.Case>
{
    public override string Name => "lighting/over-512";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Fixtures that were given an address by hand reach beyond the last slot of their universe.";

    public override string Why => "A universe has 512 slots; what lies beyond is never sent, and the fixture stays dark or does as it likes.";

    public override string Cures => "Give a lower address, or one in the next universe.";

    public override Publication Source => AnsiE111.Slots;

    // The fixtures of a row follow on from one address: one of them that is over is told for all.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Lighting.Fixtures
            .Where(fixture => fixture is { Why: Reason.Fixed, Slots: not null })
            .GroupBy(fixture => fixture.Row)
            .Select(row => row.MaxBy(fixture => fixture.Slots!.Value.Last)!)
            .Select(fixture => new Case(fixture, fixture.Slots!.Value.Last, fixture.Slots.Value.Last <= LightingControl.SlotsInUniverse ? Verdict.Holds : Verdict.Fails));

    protected override Said Say(Case found) => new(
        $"Fixture {found.Fixture.Number} at {found.Fixture.At!.Value.ToString()}: it listens up to slot {found.Last}, and a universe has {LightingControl.SlotsInUniverse}.",
        "Give a lower address, or one in the next universe.",
        $"slot {found.Last} of {LightingControl.SlotsInUniverse}");

    internal sealed record Case(FixturePlan Fixture, int Last, Verdict Verdict)
        : Judgement(Fixture.Address, Fixture.Row.At, Verdict, Fixture.ControlDoubts);
}
