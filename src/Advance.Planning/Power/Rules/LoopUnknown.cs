using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/loop-unknown</c></summary>
internal sealed class LoopUnknown : Rule<LoopUnknown.Case>
{
    public override string Name => "power/loop-unknown";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Nobody has measured or stated the loop impedance of a service, or the largest current a fault may draw there.";

    public override string Why => "Whether faults are cleared, and whether a device can break them, cannot be judged.";

    public override string Cures => "Ask the venue or the hirer on the supply request, and measure on site: there is room on the distribution sheet.";

    public override Publication Source => Bs7671.LoopImpedance;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.ServicesInUse.Select(point => new Case(point));

    protected override Said Say(Case found) => new(
        $"{found.Point.Name}: nobody has told {found.Missing}: what faults do behind it cannot be judged.",
        "Ask on the supply request, and measure on site before anything is energised.",
        $"{found.Missing}");

    private static Verdict Judge(SupplyPoint point) => point.Service is { LoopImpedance.IsKnown: true, FaultCurrent.IsKnown: true } ? Verdict.Holds : Verdict.CannotBeJudged;

    internal sealed record Case(SupplyPoint Point)
        : Judgement(Point.Address / "loop", Point.At, Judge(Point), Doubts.Of(Point.Service!.LoopImpedance?.Doubt).With(Doubts.Of(Point.Service.FaultCurrent?.Doubt)))
    {
        public string Missing => Point.Service!.LoopImpedance is { IsKnown: true } ? "the largest fault current"
            : Point.Service.FaultCurrent is { IsKnown: true } ? "the loop impedance" : "loop impedance and largest fault current";
    }
}
