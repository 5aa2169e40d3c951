using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/conductor-too-small</c></summary>
internal sealed class ConductorTooSmall : Rule<ConductorTooSmall.Case>
{
    public override string Name => "power/conductor-too-small";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A lead carries less than the device before it lets through, by the table for its size, even alone and stretched out; in North America also by its terminations.";

    public override string Why => "The lead is then the fuse.";

    public override string Cures => "Take a thicker lead, one with a fuse in its plug, or a circuit with a smaller device.";

    public override Publication Source => Bs7671.Table4F3A;

    // A fuse in the plug is the lead's device. One case for a kind of lead behind a device of one rating.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from lead in plan.Protection.Leads
        where lead.Device?.Limit.Value is not null && lead.Bare.Value is not null && lead.Lead.Cable!.Fuse is null && !lead.Run.Leads.Any(other => other.Cable!.Fuse is not null)
        group lead by (lead.Lead.Id, lead.Device!.Limit.Value!.Value.Amperes) into same
        select new Case(same.MinBy(lead => lead.Bare.Value!.Value.Amperes)!);

    protected override Said Say(Case found) => new(
        $"{found.Lead.Run.Label}: {found.Lead.Lead.Id} carries {found.Lead.Bare.Value!.Value} at the most{(found.Lead.IsByTerminations ? " by its terminations" : "")}, behind {found.Lead.Device!.Limit.Value!.Value} ({found.Lead.Device.Name}).",
        "Take a thicker lead, one with a fuse in its plug, or a circuit with a smaller device.",
        $"{found.Lead.Bare.Value!.Value} behind {found.Lead.Device!.Limit.Value!.Value}");

    // In North America cords down to 16 AWG count as protected by 20 A; what they are loaded with is told by other rules.
    private static bool IsCord(LeadCapacity lead) => lead.Device!.Rules == WiringRules.Nec
        && LeadResistance.GaugeOf(lead.Lead.Cable!.Section) is { } gauge && CordProtection.Holds(gauge, lead.Device.Limit.Value!.Value);

    internal sealed record Case(LeadCapacity Lead)
        : Judgement(Lead.Address / "device", Lead.Device!.At, IsCord(Lead) ? Verdict.Holds : Lead.Device.Limit.AtMost(Lead.Bare), Lead.Device.Limit.RestsOn.With(Lead.Bare.RestsOn));
}
