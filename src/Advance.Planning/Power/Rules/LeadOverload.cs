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

    public override string Catches => "A lead is rated for less than the device that protects it, and for less than flows through it.";

    public override string Why => "The lead is then the fuse.";

    public override string Cures => "Take a lead of a larger section, or a circuit with a smaller device.";

    public override Publication Source { get; } = new("IEC 60364-4-43: the device protects the cable", "", "433.1", Standing.FromMemory);

    // A lead with a fuse in its plug protects itself: it is judged by what flows, all others by their device.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from circuit in plan.Power.Circuits
        from load in circuit.Chain.Loads
        let run = plan.Cables.Of(Address.Of("link") / "power" / load.Name)
        where run is not null
        from lead in run.Leads.DistinctBy(kind => kind.Id)
        where lead.Cable!.Rating is not null
        select new Case(circuit, run.Label, lead, IsFused(lead) ? circuit.Use.InUse : circuit.Outlet.Limit, Figure.From(lead.Cable!.Rating!.Value));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Label}: nobody knows what {found.Lead.Id} or its circuit carries.", "Write the ratings in the stock.", $"unknown")
        : new(
            $"{found.Label}: {found.Lead.Id} is good for {found.Rating.Value!.Value} behind {found.Through.Value!.Value} ({found.Circuit.Name}).",
            "Take a lead of a larger section, or a circuit with a smaller device.",
            $"{found.Rating.Value!.Value} behind {found.Through.Value!.Value}");

    private static bool IsFused(Kind lead) => lead.Name.Contains("fused", StringComparison.OrdinalIgnoreCase);

    internal sealed record Case(Circuit Circuit, string Label, Kind Lead, Figure<ElectricCurrent> Through, Figure<ElectricCurrent> Rating)
        : Judgement(Address.Of("power") / Label / Lead.Id, Circuit.Chain.At, Through.AtMost(Rating), Through.RestsOn.With(Rating.RestsOn));
}
