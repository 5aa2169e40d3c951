using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The cables between services and units, as picked, with what comes through each.</summary>
/// <param name="brief">As written.</param>
/// <param name="power">What hangs where.</param>
/// <param name="cables">The cables.</param>
/// <param name="steady">What loads of steady power get, by load: they draw more as it falls.</param>
internal sealed class DropSegments(Brief brief, PowerPlan power, CablePlan cables, IReadOnlyDictionary<PowerLoad, SteadyVoltage> steady)
{
    private readonly MainsLeads leads = new(brief, power, cables);
    private readonly Dictionary<Address, IReadOnlyList<DropSegment>> feeders = [];
    private readonly Dictionary<PowerLoad, NeutralFacts> facts = new(ReferenceEqualityComparer.Instance);

    /// <summary>Every feeder from the service to a place. In a loom each circuit has conductors of its own.</summary>
    public IReadOnlyList<DropSegment> FeedersTo(SupplyPoint point) =>
        [.. point.Upwards.Where(above => (above.Kind == PowerNodeKind.Distribution && above.FedBy is not null) || above.LoomEnd is not null).SelectMany(Feeder)];

    /// <summary>Every lead from an outlet to the last unit of its chain.</summary>
    public IReadOnlyList<DropSegment> Chain(Circuit circuit)
    {
        var draws = circuit.Outlet.Draws.Select(one => Draw(one.Load, one.Wiring)).ToList();
        return
        [
            .. circuit.Chain.Loads.SelectMany((load, index) =>
                Segments($"lead to {load.Name}", one => leads.To(load, index == 0, one), draws[index..], LeadsTo(load).Any(HasOwnNeutral))),
        ];
    }

    private IReadOnlyList<DropSegment> Feeder(SupplyPoint point)
    {
        if (!feeders.TryGetValue(point.Address, out var feeder))
        {
            var link = Address.Of("link") / "power" / (point.LoomEnd?.Name ?? point.Name);
            feeders[point.Address] = feeder = Segments(
                point.LoomEnd is null ? $"feeder to {point.Name}" : $"loom to {point.Name}",
                one => leads.Of(link, one),
                [.. point.Allowances.Select(Draw), .. point.Draws.Select(one => Draw(one.Load, one.Wiring))],
                (cables.Of(link)?.Leads ?? []).Any(HasOwnNeutral));
        }

        return feeder;
    }

    private static bool HasOwnNeutral(Kind lead) => lead.Cable is { NeutralSection.Length: > 0 };

    private IReadOnlyList<Kind> LeadsTo(PowerLoad load) => cables.Of(Address.Of("link") / "power" / load.Name)?.Leads ?? [];

    private static IReadOnlyList<DropSegment> Segments(
        string name, Func<Func<string, Cable, Mark, Figure<ElectricResistance>>, Figure<ElectricResistance>> of, IReadOnlyList<DropDraw> draws, bool hasOwnNeutral)
    {
        var (lines, reactance) = (of(LeadResistance.Of), of((lead, cable, _) => LeadResistance.Reactance(lead, cable)));
        return hasOwnNeutral
            ?
            [
                new DropSegment($"{name}, lines", lines, reactance, draws) { Conductors = DropConductors.Lines },
                new DropSegment($"{name}, neutral", of(LeadResistance.OfNeutral), reactance, draws) { Conductors = DropConductors.Neutral },
            ]
            : [new DropSegment(name, lines, reactance, draws)];
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

        return steady.TryGetValue(load, out var volts)
            ? new DropDraw(load.Name, volts.Draw(load.Name, load.InUse), volts.Draw(load.Name, load.AtMost), found, wiring)
            : new DropDraw(load.Name, load.InUse, load.AtMost, found, wiring);
    }
}
