using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The cables between services and units, as picked, with what comes through each.</summary>
internal sealed class DropSegments(Brief brief, PowerPlan power, CablePlan cables)
{
    private static readonly Figure<ElectricResistance> Unknown = new(null, Doubts.None, Reason.Derived.It);

    private readonly Dictionary<Address, DropSegment> feeders = [];
    private readonly Dictionary<PowerLoad, NeutralFacts> facts = new(ReferenceEqualityComparer.Instance);

    /// <summary>Every feeder from the service to a place.</summary>
    public IReadOnlyList<DropSegment> FeedersTo(SupplyPoint point) =>
        [.. point.Upwards.Where(above => above.Kind == PowerNodeKind.Distribution && above.FedBy is not null).Select(Feeder)];

    /// <summary>Every lead from an outlet to the last unit of its chain.</summary>
    public IReadOnlyList<DropSegment> Chain(Circuit circuit)
    {
        var draws = circuit.Outlet.Draws.Select(one => Draw(one.Load, one.Wiring)).ToList();
        return
        [
            .. circuit.Chain.Loads.Select((load, index) => new DropSegment(
                $"lead to {load.Name}", To(load, index == 0, LeadResistance.Of), To(load, index == 0, (name, cable, _) => LeadResistance.Reactance(name, cable)), draws[index..])),
        ];
    }

    private DropSegment Feeder(SupplyPoint point)
    {
        if (!feeders.TryGetValue(point.Address, out var feeder))
        {
            var link = Address.Of("link") / "power" / point.Name;
            feeders[point.Address] = feeder = new DropSegment(
                $"feeder to {point.Name}",
                Of(link, LeadResistance.Of),
                Of(link, (name, cable, _) => LeadResistance.Reactance(name, cable)),
                [.. point.Allowances.Select(Draw), .. point.Draws.Select(one => Draw(one.Load, one.Wiring))]);
        }

        return feeder;
    }

    private DropDraw Draw(PowerAllowance allowance)
    {
        var on = power.Services.Concat(power.Distributions).First(point => point.Name == allowance.On);
        return new DropDraw($"allowance for {allowance.Row.What}", allowance.InUse, allowance.AtMost, NeutralFacts.Of(null, brief.Company.Policies), new MainsWiring(MainsWiringKind.EveryLine, on.Lines));
    }

    private DropDraw Draw(PowerLoad load, MainsWiring wiring)
    {
        if (!facts.TryGetValue(load, out var found))
        {
            facts[load] = found = NeutralFacts.Of(load, brief.Company.Policies);
        }

        return new DropDraw(load.Name, load.InUse, load.AtMost, found, wiring);
    }

    private Figure<ElectricResistance> Of(Address link, Func<string, Cable, Mark, Figure<ElectricResistance>> one) => cables.Of(link) is { Leads.Count: > 0 } run
        ? LeadResistance.InRow($"leads of {run.Label}", run.Leads.Select(kind => one(kind.Id, kind.Cable!, kind.At))) is var row ? row with { RestsOn = row.RestsOn.With(run.Needed.RestsOn) } : Unknown
        : Unknown;

    // What comes with the unit is in the way too, before it or instead of a lead that was picked.
    private Figure<ElectricResistance> To(PowerLoad load, bool isFirst, Func<string, Cable, Mark, Figure<ElectricResistance>> one)
    {
        var link = Address.Of("link") / "power" / load.Name;
        var own = isFirst ? load.Leads.Where(lead => Mating.SocketOf(lead.Value) == load.Inlet).Select(lead => one(lead.Key, lead.Value, AtOf(lead.Key))).Take(1).ToList() : [];
        var isPicked = power.Links.Any(made => made.Address == link);
        return isPicked ? LeadResistance.InRow($"leads to {load.Name}", [Of(link, one), .. own]) : LeadResistance.InRow($"lead of {load.Name}", own.Count > 0 ? own : [Unknown]);
    }

    private Mark AtOf(string item) => brief.Stock.Find(item)?.At ?? Mark.Nowhere;
}
