using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out voltage drop lead by lead, from the service through feeders and outlets to the end of each chain.</summary>
internal sealed class VoltageSums(Brief brief, PowerPlan power, CablePlan cables)
{
    private static readonly Figure<ElectricResistance> Unknown = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>All circuits.</summary>
    public VoltagePlan All()
    {
        var circuits = power.Circuits.Select(VoltageOf).ToList();
        return new VoltagePlan(circuits, [.. circuits.SelectMany(circuit => circuit.Figures)]);
    }

    private CircuitVoltage VoltageOf(Circuit circuit)
    {
        var nominal = Nominal(circuit);
        var drop = Sum.Of($"{circuit.Name}, drop as a share", "u = 100 · ΔU / U", Iec60364.AnnexG)
            .Put("ΔU", Drop(circuit, $"{circuit.Name}, drop in use", use => use.InUse, load => load.InUse))
            .Put("U", nominal)
            .Gives((lost, volts) => Ratio.FromPercent(100 * lost.Volts / volts.Volts));
        var end = Sum.Of($"{circuit.Name}, voltage at the end", "Uₑ = U - ΔU", Iec60364.AnnexG)
            .Put("U", nominal)
            .Put("ΔU", Drop(circuit, $"{circuit.Name}, drop at most", use => use.AtMost, load => load.AtMost))
            .Gives((volts, lost) => volts - lost);
        return new CircuitVoltage(circuit, drop, end);
    }

    private static Figure<ElectricPotential> Nominal(Circuit circuit)
    {
        var doubts = Doubts.Of(circuit.Outlet.Origin?.Supply.Doubt);
        var volts = circuit.Outlet.Supply?.Voltages[0].Least;
        return new Figure<ElectricPotential>(volts, doubts, new Reason.Fixed(circuit.Outlet.Origin?.Supply.At ?? circuit.Outlet.At));
    }

    private Figure<ElectricPotential> Drop(
        Circuit circuit, string name, Func<LegUse, Figure<ElectricCurrent>> through, Func<PowerLoad, Figure<ElectricCurrent>> drawn)
    {
        var feeders = circuit.Outlet.Upwards.Where(point => point.Kind == PowerNodeKind.Distribution && point.FedBy is not null)
            .Select(point => Segment($"feeder to {point.Name}", through(Worst(point)), Of(Address.Of("link") / "power" / point.Name)));
        var loads = circuit.Chain.Loads;
        var chain = loads.Select((load, index) => Segment(
            $"lead to {load.Name}", LegSum.Of($"behind {load.Name}", [.. loads.Skip(index).Select(behind => LegDraw.Of(behind, drawn(behind)))]), To(load, isFirst: index == 0)));
        return Sum.Of(name, "ΔU = Σ ΔUᵢ", Iec60364.AnnexG)
            .PutAll("ΔUᵢ", feeders.Concat(chain))
            .Gives(terms => ElectricPotential.FromVolts(terms.Values.Sum(part => part.Volts)));
    }

    private static LegUse Worst(SupplyPoint point) => point.Legs.MaxBy(use => use.InUse.Value?.Amperes ?? double.MaxValue)!;

    private static Figure<ElectricPotential> Segment(string name, Figure<ElectricCurrent> current, Figure<ElectricResistance> resistance) =>
        Sum.Of($"drop on {name}", "ΔU = I · R", Iec60364.AnnexG)
            .Put("I", current)
            .Put("R", resistance)
            .Gives((amperes, ohms) => ElectricPotential.FromVolts(amperes.Amperes * ohms.Ohms));

    private Figure<ElectricResistance> Of(Address link) => cables.Of(link) is { Leads.Count: > 0 } run
        ? LeadResistance.InRow($"leads of {run.Label}", run.Leads.Select(Lead)) is var row ? row with { RestsOn = row.RestsOn.With(run.Needed.RestsOn) } : Unknown
        : Unknown;

    // What comes with the unit is in the way too, before it or instead of a lead that was picked.
    private Figure<ElectricResistance> To(PowerLoad load, bool isFirst)
    {
        var link = Address.Of("link") / "power" / load.Name;
        var own = isFirst ? load.Leads.Where(lead => Mating.SocketOf(lead.Value) == load.Inlet).Select(lead => LeadResistance.Of(lead.Key, lead.Value, AtOf(lead.Key))).Take(1).ToList() : [];
        var isPicked = power.Links.Any(made => made.Address == link);
        return isPicked ? LeadResistance.InRow($"leads to {load.Name}", [Of(link), .. own]) : LeadResistance.InRow($"lead of {load.Name}", own.Count > 0 ? own : [Unknown]);
    }

    private static Figure<ElectricResistance> Lead(Kind kind) => LeadResistance.Of(kind.Id, kind.Cable!, kind.At);

    private Mark AtOf(string item) => brief.Stock.Find(item)?.At ?? Mark.Nowhere;
}
