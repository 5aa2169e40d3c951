using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/fault-not-cleared</c></summary>
internal sealed class FaultNotCleared : Rule<FaultNotCleared.Case>
{
    public override string Name => "power/fault-not-cleared";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Under the rules of IEC: a fault at the far end of a lead draws too little for its device to open in time, and no residual-current device does it instead.";

    public override string Why => "Metal that people hold stays live until somebody pulls a plug.";

    public override string Cures => "A shorter or thicker lead, a smaller device or one of type B, or a residual-current device before it.";

    public override Publication Source => Bs7671.LoopImpedance;

    // A supply that nobody has measured is one question, and told by another rule.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from way in plan.Protection.Faults
        where way.Point.Rules == WiringRules.Iec && way.Loop.Value is not null
        select new Case(way);

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Way.Name}: {found.Way.Loop.Value!.Value} at its far end, and nobody knows what opens its device.", "Write the type of the device in the stock: B16, C16, gG 63.", $"unknown")
        : new(
            $"{found.Way.Name}: {found.Way.Loop.Value!.Value} at its far end, and {found.Way.Device?.Name} opens in time up to {found.Way.Allowed.Value!.Value}.",
            "A shorter or thicker lead, a smaller device or one of type B, or a residual-current device before it.",
            $"{found.Way.Loop.Value!.Value} of {found.Way.Allowed.Value!.Value}");

    internal sealed record Case(FaultWay Way) : Judgement(Way.Address, Way.At, Way.Cleared, Way.Loop.RestsOn.With(Way.Allowed.RestsOn));
}
