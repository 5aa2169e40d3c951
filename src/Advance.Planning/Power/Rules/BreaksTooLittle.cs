using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/breaks-too-little</c></summary>
internal sealed class BreaksTooLittle : Rule<BreaksTooLittle.Case>
{
    public override string Name => "power/breaks-too-little";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A fault may draw more than the device before it can break.";

    public override string Why => "The device bursts instead of opening.";

    public override string Cures => "A device with a higher breaking capacity, or a longer lead before it.";

    public override Publication Source => Bs7671.BreakingCapacity;

    // Each device once; what nobody knows is told by another rule, or asked on the supply request.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from way in plan.Protection.Faults
        where way.Device is not null && way.Largest.Value is not null
        let breaks = way.Device!.Row?.Breaks ?? way.Device.Service?.Breaks
        where breaks is not null
        group new Case(way, Figure.From(breaks.Value)) by way.Device!.Address into same
        select same.First();

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Way.Device!.Name}: nobody knows what its device can break.", "Write it: breaks, in kA.", $"unknown")
        : new(
            $"{found.Way.Device!.Name}: a fault may draw {found.Way.Largest.Value!.Value}, and its device breaks {found.Breaks.Value!.Value}.",
            "A device with a higher breaking capacity, or a longer lead before it.",
            $"{found.Way.Largest.Value!.Value} of {found.Breaks.Value!.Value}");

    internal sealed record Case(FaultWay Way, Figure<ElectricCurrent> Breaks)
        : Judgement(Way.Device!.Address / "breaks", Way.Device.At, Way.Largest.AtMost(Breaks), Way.Largest.RestsOn.With(Breaks.RestsOn));
}
