using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>lighting/no-address-left</c></summary>
internal sealed class NoAddressLeft : Rule<NoAddressLeft.Case>
{
    public override string Name => "lighting/no-address-left";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A fixture has no control address: all universes that the desk sends are full.";

    public override string Why => "What has no address cannot be controlled, and is found when the show is programmed.";

    public override string Cures => "Use modes with fewer slots, let alike fixtures share an address, or bring a desk with more universes.";

    public override Publication Source => AnsiE111.Slots;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Lighting.Fixtures
            .Where(fixture => fixture.Mode is not null)
            .Select(fixture => new Case(fixture, plan.Lighting.DeskUniverses ?? 0, fixture.At is null ? Verdict.Fails : Verdict.Holds));

    protected override Said Say(Case found) => new(
        $"{found.Fixture.Name}: no room for its {found.Fixture.Mode!.Slots} slots in {found.Universes} universes.",
        "Use modes with fewer slots, let alike fixtures share an address, or bring a desk with more universes.",
        $"{found.Fixture.Mode.Slots} slots, {found.Universes} universes");

    internal sealed record Case(FixturePlan Fixture, int Universes, Verdict Verdict)
        : Judgement(Fixture.Address, Fixture.Row.At, Verdict, Fixture.ControlDoubts);
}
