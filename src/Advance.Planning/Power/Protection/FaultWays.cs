using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out fault loops from the cables as picked: to the end of each chain, and to the inlet of each box.</summary>
internal sealed class FaultWays(Brief brief, PowerPlan power, CablePlan cables)
{
    private static readonly Figure<ElectricResistance> Unknown = new(null, Doubts.None, Reason.Derived.It);

    private readonly MainsLeads leads = new(brief, power, cables);

    /// <summary>Boxes first, then circuits.</summary>
    public IReadOnlyList<FaultWay> All() =>
    [
        .. power.Distributions.Where(box => box.FedBy is not null && box.Loom.Count == 0).Select(box => Of(box, box.Name, box.FedBy!.Protection, Feeders(box), isFinal: false, box.At)),
        .. power.Circuits.Select(circuit => Of(circuit.Outlet, circuit.Name, circuit.Outlet.Protection, Way(circuit), isFinal: true, circuit.Chain.At)),
    ];

    private delegate Figure<ElectricResistance> Adds(Func<string, Cable, Mark, Figure<ElectricResistance>> one);

    private List<(Adds Of, IReadOnlyList<Kind> Leads)> Feeders(SupplyPoint point) =>
    [
        .. point.Upwards.Where(above => (above.Kind == PowerNodeKind.Distribution && above.FedBy is not null) || above.LoomEnd is not null)
            .Select(above => Address.Of("link") / "power" / (above.LoomEnd?.Name ?? above.Name))
            .Select(link => ((Adds)(one => leads.Of(link, one)), cables.Of(link)?.Leads ?? [])),
    ];

    private List<(Adds Of, IReadOnlyList<Kind> Leads)> Way(Circuit circuit) =>
    [
        .. Feeders(circuit.Outlet),
        .. circuit.Chain.Loads.Select((load, index) => ((Adds)(one => leads.To(load, index == 0, one)), cables.Of(Address.Of("link") / "power" / load.Name)?.Leads ?? (IReadOnlyList<Kind>)[])),
    ];

    private FaultWay Of(SupplyPoint point, string name, SupplyPoint? device, List<(Adds Of, IReadOnlyList<Kind> Leads)> way, bool isFinal, Mark at)
    {
        var (residual, largest) = (Finest(point), LargestAt(point, device));
        var weakest = ConductorHeat.Weakest([.. way.SelectMany(segment => segment.Leads).TakeWhile(lead => lead.Cable!.Fuse is null)]);
        return new FaultWay(
            point, name, device, LoopOf(point, name, way), FaultDevice.Permitted(device, VoltageOf(point), isFinal), residual, residual is null ? Unknown : FaultDevice.ByResidual(name, residual), largest,
            new Figure<double>(weakest?.Section, Doubts.None, Reason.Derived.It), NeededSection.Of(name, device, largest, weakest?.K), at);
    }

    private static Figure<ElectricPotential> VoltageOf(SupplyPoint point) => new(
        point.Origin?.Supply is { } given && given.Is(out var supply) ? supply.Voltages[0].Least : null, Doubts.Of(point.Origin?.Supply.Doubt), new Reason.Fixed(point.Origin?.Supply.At ?? point.At));

    private static Figure<ElectricResistance> LoopOf(SupplyPoint point, string name, List<(Adds Of, IReadOnlyList<Kind> Leads)> way) =>
        Sum.Of($"{name}, loop at the far end", "Zs = Ze + √((Σ Rᵢ + Σ rᵢ)² + (2 · Σ Xᵢ)²)", Bs7671.LoopImpedance)
            .Put("Ze", point.Origin?.LoopImpedance is { } given ? Figure.From(given) : Asked(point, "loop-impedance"))
            .PutAll("Rᵢ", way.Select(segment => segment.Of(LeadResistance.Of)))
            .PutAll("rᵢ", way.Select(segment => segment.Of(LeadResistance.OfEarth)))
            .PutAll("Xᵢ", way.Select(segment => segment.Of((lead, cable, _) => LeadResistance.Reactance(lead, cable))))
            .Gives((supply, lines, earths, reactances) => FaultLoop.AtMost(supply, FaultLoop.OfCables(Total(lines), Total(earths), Total(reactances), Total(reactances))));

    private static Figure<ElectricResistance> Asked(SupplyPoint point, string key) => point.Origin is { } service
        ? Unknown with { RestsOn = Doubts.Of(new Doubt($"service {service.Name} / {key}", service.At, LeftOut: true)) }
        : Unknown;

    private static ElectricResistance Total(Terms<ElectricResistance> terms) => ElectricResistance.FromOhms(terms.Values.Sum(one => one.Ohms));

    // What a residual-current device of the service or of an outlet trips at; the finest of those that are known.
    private static Figure<ElectricCurrent>? Finest(SupplyPoint point) => point.Upwards
        .Select(above => above.Row?.Residual ?? above.Service?.ResidualProtection)
        .Where(given => given is { IsKnown: true } known && known.Value.Amperes > 0)
        .Select(given => Figure.From(given!.Value))
        .MinBy(figure => figure.Value!.Value.Amperes);

    // With cold cables between the service and the device; three lines together draw up to twice what one does.
    private Figure<ElectricCurrent> LargestAt(SupplyPoint point, SupplyPoint? device)
    {
        if (device is null || point.Origin?.FaultCurrent is not { } given)
        {
            return new Figure<ElectricCurrent>(null, Doubts.None, Reason.Derived.It);
        }

        var before = Feeders(device).Select(segment => segment.Of(LeadResistance.OfCold)).ToList();
        return before.Count == 0 ? Figure.From(given) : Sum.Of($"{device.Name}, largest fault current", "I = U₀ / √((U₀ / Iₚ)² + (2 · Σ Rᵢ)²)", CircuitTheory.Ohm)
            .Put("U₀", VoltageOf(point))
            .Put("Iₚ", Figure.From(given))
            .PutAll("Rᵢ", before)
            .Gives((volts, most, lines) => ElectricCurrent.FromAmperes(volts.Volts / FaultLoop.AtLeast(ElectricResistance.FromOhms(volts.Volts / most.Amperes), 2 * Total(lines)).Ohms));
    }
}
