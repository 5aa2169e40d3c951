using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/lead-overload</c></summary>
internal sealed class LeadOverload : Rule<LeadOverload.Case>
{
    public override string Name => "power/lead-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A mains lead is rated for less than the device that protects it.";

    public override string Why => "The lead is then the fuse.";

    public override string Cures => "Take a lead of a larger section, one with a fuse in its plug, or a circuit with a smaller device.";

    public override Publication Source { get; } = new("IEC 60364-4-43: the device protects the cable", "", "433.1", Standing.FromMemory);

    // One case for a kind of lead, where it lies worst. A device that nobody knows is asked for by another rule.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        Leads(plan).GroupBy(found => found.Lead.Id, StringComparer.Ordinal).Select(group => group.OrderByDescending(found => Rank(found.Verdict)).ThenBy(found => found.Where).First());

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Label}: nobody knows what {found.Lead.Id} may carry.", "Write its rating in the stock.", $"unknown")
        : new(
            $"{found.Label}: {found.Lead.Id} is good for {found.Rating.Value!.Value} behind {found.Device.Value!.Value} ({found.Behind}).",
            "Take a lead of a larger section, one with a fuse in its plug, or a circuit with a smaller device.",
            $"{found.Rating.Value!.Value} behind {found.Device.Value!.Value}");

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Fails => 2,
        Verdict.CannotBeJudged => 1,
        _ => 0,
    };

    private static IEnumerable<Case> Leads(Plan plan)
    {
        var link = Address.Of("link") / "power";
        var circuits = plan.Power.Circuits.SelectMany(circuit => circuit.Chain.Loads.Select(load => (Link: link / load.Name, Device: circuit.Outlet.Protection, circuit.Chain.At)));
        var feeders = plan.Power.Distributions.Where(point => point.FedBy is not null).Select(point => (Link: link / point.Name, Device: point.FedBy!.Protection, point.At));
        return
            from way in circuits.Concat(feeders)
            where way.Device?.Limit.Value is not null
            let run = plan.Cables.Of(way.Link)
            where run is not null
            from found in Leads(run, way.Device!, way.At)
            select found;
    }

    // A fuse in a plug protects its lead and those behind it.
    private static IEnumerable<Case> Leads(Run run, SupplyPoint device, Mark at)
    {
        var (limit, behind) = (device.Limit, device.Name);
        foreach (var lead in run.Leads)
        {
            if (lead.Cable!.Fuse is { IsKnown: true } fuse && fuse.Value.Amperes < limit.Value!.Value.Amperes)
            {
                (limit, behind) = (Figure.From(fuse), "the fuse in its plug");
            }

            yield return new Case(run.Label, lead, limit, lead.Cable.Rating is { } rating ? Figure.From(rating) : new Figure<ElectricCurrent>(null, Doubts.None, Reason.Derived.It), behind, at);
        }
    }

    internal sealed record Case(string Label, Kind Lead, Figure<ElectricCurrent> Device, Figure<ElectricCurrent> Rating, string Behind, Mark At)
        : Judgement(Address.Of("power") / Label / Lead.Id, At, Device.AtMost(Rating), Device.RestsOn.With(Rating.RestsOn));
}
