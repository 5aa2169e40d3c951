using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/voltage-rises</c></summary>
internal sealed class VoltageRises : Rule<VoltageRises.Case>
{
    public override string Name => "power/voltage-rises";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "With the other legs loaded, the voltage on a light leg rises above what units stand.";

    public override string Why => "The neutral carries the others' current and moves; what hangs on the light leg gets the difference.";

    public override string Cures => "Spread the loads over the legs, or take a feeder of larger section.";

    public override Publication Source { get; } = new("IEC 60038: 230 V within a tenth; ANSI C84.1: 120 V up to 126 V", "", "", Standing.FromMemory);

    private static readonly Figure<Ratio> Tenth = new(Ratio.FromPercent(10), Domain.Facts.Doubts.None, Reason.Derived.It);

    private static readonly Figure<Ratio> Twentieth = new(Ratio.FromPercent(5), Domain.Facts.Doubts.None, Reason.Derived.It);

    // What cannot be worked out is told of the voltage drop.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Voltage.Points
        from found in point.Legs.Index()
        let line = point.Point.Lines[found.Index]
        where found.Item.Rise.Value is not null && point.Point.Draws.Any(draw => draw.Wiring.UsesNeutral && draw.Wiring.Lines.Contains(line))
        select new Case(point.Point, found.Item, point.Point.Rules == WiringRules.Nec ? Twentieth : Tenth);

    protected override Said Say(Case found) => new(
        $"{found.Point.Name} {found.Leg.Leg}: {found.Leg.Rise.Value!.Value} above the nominal voltage with {string.Join(" and ", found.Leg.RiseOn)} on, {found.Most.Value!.Value} allowed.",
        "Spread the loads over the legs, or take a feeder of larger section.",
        $"{found.Leg.Rise.Value!.Value} of {found.Most.Value!.Value}");

    internal sealed record Case(SupplyPoint Point, LegVoltage Leg, Figure<Ratio> Most)
        : Judgement(Point.Address / Leg.Leg / "rise", Point.At, Leg.Rise.AtMost(Most), Leg.Rise.RestsOn);
}
