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

    public override string Catches => "More current flows in the earth of a plug than such a plug may have: 3.5 mA, or 10 mA by a connector of IEC 60309 on a thin lead, or in the one earth of a feeder: 10 mA.";

    public override string Why => "If that one earth contact opens, all metal behind it is live with nothing wrong in any unit.";

    public override string Cures => "Spread the units over more outlets, or use a connector of IEC 60309 with an earth of 2.5 mm² (above 16 A of 4 mm²), or a second earth.";

    public override Publication Source => Bs7671.ProtectiveConductorCurrent;

    // A thick earth by a connector of IEC 60309 is enough for any: 2.5 mm² to 16 A, 4 mm² above (543.7.1.202, from memory).
    private const double Thick = 2.5;
    private const double Thicker = 4;
    private const double Small = 16;

    // What nobody knows is asked for by another rule. A loom has an earth for each circuit.
    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. from circuit in plan.Power.Circuits
           where circuit.Outlet.Rules == WiringRules.Iec && circuit.Leakage.Value is not null
           let connector = MainsConnectors.Find(circuit.Outlet.Connector)
           where connector is not null
           select new Case(circuit.Outlet, $"{circuit.Name}, {circuit.Chain.Name}", Most(connector, IsThick(plan, circuit.Chain.First.Name, connector), ProtectiveConductors.MostByPlug, circuit.Leakage), circuit.Chain.At),
        .. from box in plan.Power.Distributions
           where box.FedBy is not null && box.Loom.Count == 0 && box.Rules == WiringRules.Iec && box.Leakage.Value is not null
           let connector = MainsConnectors.Find(box.Connector)
           where connector is not null
           select new Case(box, $"Feeder of {box.Name}", Most(connector, IsThick(plan, box.Name, connector), ProtectiveConductors.MostByOneConductor, box.Leakage), box.At),
    ];

    protected override Said Say(Case found) => new(
        $"{found.Name}: {found.Point.Leakage.Value!.Value} in its earth, and its connector and lead are good for {found.Allowed.Value!.Value}.",
        "Spread the units over more outlets, or give it a thicker or a second earth.",
        $"{found.Point.Leakage.Value!.Value} of {found.Allowed.Value!.Value}");

    private static Figure<ElectricCurrent> Most(MainsConnector connector, bool isThick, ElectricCurrent byOther, Figure<ElectricCurrent> leakage)
    {
        var isIndustrial = connector.Source == ConnectorStandards.Iec60309;
        var thin = leakage.Value!.Value > ProtectiveConductors.MostByOneConductor && !isThick;
        return new Figure<ElectricCurrent>(!isIndustrial ? byOther : thin ? ProtectiveConductors.MostByOneConductor : leakage.Value, Doubts.None, Reason.Derived.It);
    }

    // A unit that comes with its lead has none that was picked.
    private static bool IsThick(Plan plan, string name, MainsConnector connector)
    {
        var least = connector.Rating.Amperes > Small ? Thicker : Thick;
        var leads = plan.Cables.Of(Address.Of("link") / "power" / name)?.Leads ?? [];
        return leads.Count > 0 && leads.All(lead => LeadResistance.SquareMillimetres(lead.Cable!.EarthSection.Length > 0 ? lead.Cable.EarthSection : lead.Cable.Section) >= least);
    }

    internal sealed record Case(SupplyPoint Point, string Name, Figure<ElectricCurrent> Allowed, Mark From)
        : Judgement(Point.Address / "earth-current", From, Point.Leakage.AtMost(Allowed), Point.Leakage.RestsOn);
}
