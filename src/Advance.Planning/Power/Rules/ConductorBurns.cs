using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/conductor-burns</c></summary>
internal sealed class ConductorBurns : Rule<ConductorBurns.Case>
{
    public override string Name => "power/conductor-burns";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Under the rules of IEC: a conductor, line or earth, is too thin to outlive a fault until its device is open (k²S² ≥ I²t).";

    public override string Why => "The earth of the lead burns through in the moment it is needed, or the lead sets fire to what it lies on.";

    public override string Cures => "A lead with thicker conductors, a smaller device, or one whose maker states that it lets through less.";

    public override Publication Source => Bs7671.Table431;

    // One case for a device and a section. What nobody has measured, and a conductor or a device of which nobody knows, is asked for by other
    // rules.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from way in plan.Protection.Faults
        where way.Point.Rules == WiringRules.Iec && way.Section.Value is not null
        where way.Needed.Section.Value is not null || (way.Device is { } device && FaultDevice.Written(device).Length > 0 && way.Largest.Value is not null)
        group new Case(way) by (way.Device?.Address, way.Section.Value) into same
        select same.OrderByDescending(found => found.Verdict != Verdict.Holds).First();

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Way.Name}: nobody knows what {found.Way.Device!.Name} lets through of a fault of {found.Way.Largest.Value!.Value}, and a conductor of {found.Way.Section.Value!.Value} mm² has to outlive it.", "Look into its maker's curve.", $"unknown")
        : new(
            $"{found.Way.Name}: a conductor of {found.Way.Section.Value!.Value} mm², and {found.Way.Needed.Section.Value!.Value} mm² outlive a fault behind {found.Way.Device!.Name}.",
            "A lead with thicker conductors, or a smaller device.",
            $"{found.Way.Section.Value!.Value} of {found.Way.Needed.Section.Value!.Value}");

    internal sealed record Case(FaultWay Way)
        : Judgement(Way.Address / "burns", Way.At, Judge(Way), Way.Needed.Section.RestsOn.With(Way.Section.RestsOn))
    {
        // A bound that is too much says nothing of what really comes.
        private static Verdict Judge(FaultWay way) =>
            way.Needed.Section.AtMost(way.Section) is var verdict && verdict == Verdict.Fails && way.Needed.IsBound ? Verdict.CannotBeJudged : verdict;
    }
}
