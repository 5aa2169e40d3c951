using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The mains leads of each link as picked, added up end to end.</summary>
internal sealed class MainsLeads(Brief brief, PowerPlan power, CablePlan cables)
{
    private static readonly Figure<ElectricResistance> Unknown = new(null, Doubts.None, Reason.Derived.It);

    /// <summary>Of all leads of a link; unknown where there are none.</summary>
    /// <param name="link">Its address.</param>
    /// <param name="one">What a lead adds, from its name, its cable and where that was written.</param>
    public Figure<ElectricResistance> Of(Address link, Func<string, Cable, Mark, Figure<ElectricResistance>> one) => cables.Of(link) is { Leads.Count: > 0 } run
        ? LeadResistance.InRow($"leads of {run.Label}", run.Leads.Select(kind => one(kind.Id, kind.Cable!, kind.At))) is var row ? row with { RestsOn = row.RestsOn.With(run.Needed.RestsOn) } : Unknown
        : Unknown;

    /// <summary>Up to a unit. What comes with it is in the way too, before it or instead of a lead that was picked.</summary>
    public Figure<ElectricResistance> To(PowerLoad load, bool isFirst, Func<string, Cable, Mark, Figure<ElectricResistance>> one)
    {
        var link = Address.Of("link") / "power" / load.Name;
        var own = isFirst ? load.Leads.Where(lead => Mating.SocketOf(lead.Value) == load.Inlet).Select(lead => one(lead.Key, lead.Value, AtOf(lead.Key))).Take(1).ToList() : [];
        var isPicked = power.Links.Any(made => made.Address == link);
        return isPicked ? LeadResistance.InRow($"leads to {load.Name}", [Of(link, one), .. own]) : LeadResistance.InRow($"lead of {load.Name}", own.Count > 0 ? own : [Unknown]);
    }

    private Mark AtOf(string item) => brief.Stock.Find(item)?.At ?? Mark.Nowhere;
}
