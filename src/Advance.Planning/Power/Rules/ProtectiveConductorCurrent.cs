using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/protective-conductor-current</c></summary>
internal sealed class ProtectiveConductorCurrent : Rule<ProtectiveConductorCurrent.Case>
{
    public override string Name => "power/protective-conductor-current";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "More current flows in the earth of a plug than such a plug may have: 3.5 mA, or 10 mA by a connector of IEC 60309 on a thin lead.";

    public override string Why => "If that one earth contact opens, all metal behind it is live with nothing wrong in any unit.";

    public override string Cures => "Spread the units over more outlets, or use a connector of IEC 60309 with an earth of 2.5 mm² (above 16 A of 4 mm²), or a second earth.";

    public override Publication Source => Bs7671.ProtectiveConductorCurrent;

    // A thick earth by a connector of IEC 60309 is enough for any: 2.5 mm² to 16 A, 4 mm² above (543.7.1.202, from memory).
    private const double Thick = 2.5;
    private const double Thicker = 4;
    private const double Small = 16;

    // What nobody knows is asked for by another rule.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from circuit in plan.Power.Circuits
        where circuit.Outlet.Rules == WiringRules.Iec && circuit.Outlet.Leakage.Value is not null
        let connector = MainsConnectors.Find(circuit.Outlet.Connector)
        where connector is not null
        select new Case(circuit, Most(circuit, connector, plan));

    protected override Said Say(Case found) => new(
        $"{found.Circuit.Name}, {found.Circuit.Chain.Name}: {found.Circuit.Leakage.Value!.Value} in its earth, and its connector and lead are good for {found.Allowed.Value!.Value}.",
        "Spread the units over more outlets, or give it a thicker or a second earth.",
        $"{found.Circuit.Leakage.Value!.Value} of {found.Allowed.Value!.Value}");

    private static Figure<ElectricCurrent> Most(Circuit circuit, MainsConnector connector, Plan plan)
    {
        var isIndustrial = connector.Source == ConnectorStandards.Iec60309;
        var thin = circuit.Leakage.Value!.Value > ProtectiveConductors.MostByOneConductor && isIndustrial && !IsThick(circuit, connector, plan);
        return new Figure<ElectricCurrent>(
            !isIndustrial ? ProtectiveConductors.MostByPlug : thin ? ProtectiveConductors.MostByOneConductor : circuit.Leakage.Value, Doubts.None, Reason.Derived.It);
    }

    // A unit that comes with its lead has none that was picked.
    private static bool IsThick(Circuit circuit, MainsConnector connector, Plan plan)
    {
        var least = connector.Rating.Amperes > Small ? Thicker : Thick;
        var leads = plan.Cables.Of(Address.Of("link") / "power" / circuit.Chain.First.Name)?.Leads ?? [];
        return leads.Count > 0 && leads.All(lead => LeadResistance.SquareMillimetres(lead.Cable!.EarthSection.Length > 0 ? lead.Cable.EarthSection : lead.Cable.Section) >= least);
    }

    internal sealed record Case(Circuit Circuit, Figure<ElectricCurrent> Allowed)
        : Judgement(Circuit.Address / "earth-current", Circuit.Chain.At, Circuit.Leakage.AtMost(Allowed), Circuit.Leakage.RestsOn);
}
