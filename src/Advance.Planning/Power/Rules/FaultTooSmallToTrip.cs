using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/fault-too-small-to-trip</c></summary>
internal sealed class FaultTooSmallToTrip : Rule<FaultTooSmallToTrip.Case>
{
    public override string Name => "power/fault-too-small-to-trip";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A generator cannot drive the current that opens a device, and no residual-current device is there to do it.";

    public override string Why => "The set sags and feeds the fault: nothing opens, and metal stays live.";

    public override string Cures => "Residual-current devices on every circuit, smaller devices or type B, or a larger set.";

    public override Publication Source { get; } = new("IEC 60364-5-55: generating sets", "", "551", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Generators.Select(set => CaseOf(plan, set));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Point.Name}: nobody knows what opens {found.Device.Name}, which has no residual-current device.", "Write the type of the device, or give it a residual-current device.", $"unknown")
        : new(
            $"{found.Point.Name}: the set drives {found.Sustained.Value!.Value} into a fault, and {found.Device.Name} opens at once from {found.Operating!.Value!.Value}; no residual-current device is before it.",
            "Residual-current devices on every circuit, smaller devices or type B, or a larger set.",
            $"{found.Sustained.Value!.Value} of {found.Operating!.Value!.Value}");

    // The largest device behind a set that no residual-current device helps: one finding for the set.
    private static Case CaseOf(Plan plan, GeneratorPlan set)
    {
        var (worst, operating) = plan.Protection.Faults
            .Where(way => way.Point.Root.Address == set.Service.Address && way is { Device: not null, Residual: null })
            .Select(way => (way.Device, Operating: (Figure<ElectricCurrent>?)FaultDevice.Operating(way.Device)))
            .OrderByDescending(one => one.Operating!.Value?.Amperes ?? double.MaxValue)
            .FirstOrDefault();
        return new Case(set.Service, worst ?? set.Service, set.Sustained, operating);
    }

    private static Verdict Judge(Figure<ElectricCurrent>? operating, Figure<ElectricCurrent> sustained) => operating is null ? Verdict.Holds : operating.AtMost(sustained);

    internal sealed record Case(SupplyPoint Point, SupplyPoint Device, Figure<ElectricCurrent> Sustained, Figure<ElectricCurrent>? Operating)
        : Judgement(Point.Address / "sustained", Point.At, Judge(Operating, Sustained), Sustained.RestsOn);
}
