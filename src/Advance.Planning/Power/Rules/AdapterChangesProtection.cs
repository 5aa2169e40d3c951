using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/adapter-changes-protection</c></summary>
internal sealed class AdapterChangesProtection : Rule<AdapterChangesProtection.Case>
{
    public override string Name => "power/adapter-changes-protection";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "An adapter or a lead goes to a connector that carries less than the device before it lets through, and has no fuse of its own.";

    public override string Why => "The smaller connector is then the fuse: it chars under somebody's foot, and nothing opens.";

    public override string Cures => "Take an adapter with a fuse in its plug, a circuit with a smaller device, or one with the same connector throughout.";

    public override Publication Source { get; } = new("BS 1363, IEC 60309-1, IEC 60320-1: a connector is protected at its own rating", "", "", Standing.FromMemory);

    // One case for a kind of lead, where it lies worst. What nobody knows of a connector is no fault; what a lead carries is told by other rules.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from lead in ProtectedLead.Of(plan)
        where lead.ConnectorCarries.Value is not null && (lead.IsForItsConnector || lead.Limit.AtMost(lead.ConnectorCarries) == Verdict.Holds)
        group new Case(lead) by lead.Lead.Id into kind
        select kind.OrderByDescending(found => found.Verdict == Verdict.Fails).ThenBy(found => found.Where).First();

    protected override Said Say(Case found) => new(
        $"{found.Lead.Use.Run.Label}: {found.Lead.Connector} on {found.Lead.Lead.Id} carries {found.Lead.ConnectorCarries.Value!.Value}, behind {found.Lead.Limit.Value!.Value} ({found.Lead.Behind}).",
        "Take an adapter with a fuse in its plug, or a circuit with a smaller device.",
        $"{found.Lead.ConnectorCarries.Value!.Value} behind {found.Lead.Limit.Value!.Value}");

    private static bool IsAllowed(ProtectedLead lead) => lead.Use.Point.Rules == WiringRules.Nec && lead.ConnectorCarries.Value is { } carries && lead.Limit.Value is { } limit
        && CordProtection.HoldsConnector(carries, limit) && LeadResistance.GaugeOf(lead.Lead.Cable!.Section) is { } gauge && CordProtection.Holds(gauge, limit);

    internal sealed record Case(ProtectedLead Lead)
        : Judgement(Address.Of("power") / "adapter" / Lead.Use.Run.Label / Lead.Lead.Id, Lead.Use.At, IsAllowed(Lead) ? Verdict.Holds : Lead.Limit.AtMost(Lead.ConnectorCarries), Lead.Limit.RestsOn);
}
