using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Finds what comes through each mains run: feeders, leads from outlets, links from unit to unit.</summary>
internal static class LeadUses
{
    /// <summary>All runs that were picked.</summary>
    public static IReadOnlyList<LeadUse> Of(PowerPlan power, CablePlan cables)
    {
        var link = Address.Of("link") / "power";
        var feeders = power.Distributions.Where(box => box.FedBy is not null).Select(box => cables.Of(link / box.Name) is { Leads.Count: > 0 } run ? Feeder(box, run) : null);
        var leads = power.Circuits.SelectMany(circuit => circuit.Chain.Loads.Select((load, index) => cables.Of(link / load.Name) is { Leads.Count: > 0 } run ? Lead(circuit, index, run) : null));
        return [.. feeders.Concat(leads).OfType<LeadUse>()];
    }

    // In a loom each circuit has its own conductors: the fullest of them counts.
    private static LeadUse Feeder(SupplyPoint box, Run run)
    {
        var legs = box.Loom.Count > 0 ? box.Loom.SelectMany(outlet => outlet.Legs).ToList() : [.. box.Legs];
        return new LeadUse(run, box.FedBy!.Protection, Largest(legs.ConvertAll(leg => leg.InUse)), Largest(legs.ConvertAll(leg => leg.AtMost)), box.Loom.Count > 0 ? 2 : LoadedOn(box), box, box.At);
    }

    private static LeadUse Lead(Circuit circuit, int index, Run run)
    {
        var behind = circuit.Chain.Loads.Skip(index).ToList();
        var (inUse, atMost) = index == 0
            ? (circuit.Outlet.Worst.InUse, Largest([.. circuit.Outlet.Legs.Select(leg => leg.AtMost)]))
            : (Through(behind, load => load.InUse), Through(behind, load => load.AtMost));
        return new LeadUse(run, circuit.Outlet.Protection, inUse, atMost, LoadedOn(circuit.Outlet), circuit.Outlet, circuit.Chain.At);
    }

    private static Figure<ElectricCurrent> Through(List<PowerLoad> loads, Func<PowerLoad, Figure<ElectricCurrent>> draw) =>
        LegSum.Of($"through the link to {loads[0].Name}", [.. loads.Select(load => LegDraw.Of(load, draw(load)))]);

    private static Figure<ElectricCurrent> Largest(List<Figure<ElectricCurrent>> legs) => legs.Find(leg => leg.Value is null) ?? legs.MaxBy(leg => leg.Value!.Value.Amperes)!;

    // Of a split phase the neutral carries the difference alone; two legs of a wye load it like a third line (NEC 310.15(E)).
    private static int LoadedOn(SupplyPoint point) => point.Lines.Count switch
    {
        1 => 2,
        2 => ReferenceEquals(point.Angles, LegAngles.SplitPhase) ? 2 : 3,
        _ => 3,
    };
}
