using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/no-residual-at-origin</c></summary>
internal sealed class NoResidualAtOrigin : Rule<NoResidualAtOrigin.Case>
{
    public override string Name => "power/no-residual-at-origin";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Under the rules of IEC: a supply for what stands in the open has no residual-current device of 300 mA or less at its origin that waits for those behind it.";

    public override string Why => "A feeder that lies in wet grass, or is driven over, is then protected by nothing that sees a fault to earth.";

    public override string Cures => "Ask for a delayed (type S) device of 300 mA or less where the supply begins.";

    public override Publication Source { get; } = new("BS 7671: temporary structures, 300 mA at the origin, delayed", "2018 + A2:2022", "740.410.3", Standing.FromMemory);

    private const string Cure = "Ask for a delayed (type S) device of 300 mA or less at its origin.";

    private static readonly Figure<ElectricCurrent> Most = new(ElectricCurrent.FromAmperes(0.3), Doubts.None, Reason.Derived.It);

    // Of a service of which nobody says that it is outdoors nothing is asked. That one which does not wait opens together with those behind it
    // is told by another rule.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.ServicesInUse
        where point.Rules == WiringRules.Iec && point.Service!.IsOutdoor is { IsKnown: true, Value: true }
        select new Case(point, Figure.From(point.Service!.ResidualProtection), ResidualDevice.At(point));

    protected override Said Say(Case found) => (found.Verdict, found.Device) switch
    {
        (Verdict.Fails, null) => new($"{found.Point.Name} is in the open, and no residual-current device is at its origin, where {Most.Value!.Value} with a delay is asked for.", Cure, $"none"),
        (Verdict.Fails, _) => new($"{found.Point.Name} is in the open, and the residual-current device at its origin has {found.Rating.Value!.Value}, where {Most.Value!.Value} with a delay is asked for.", Cure, $"{found.Rating.Value!.Value}"),
        (_, null) => new($"{found.Point.Name} is in the open, and nobody knows of a residual-current device at its origin.", "Write its residual-protection.", $"unknown"),
        _ => new($"{found.Point.Name} is in the open, and nobody knows whether the residual-current device at its origin waits.", "Write its residual-delay.", $"unknown"),
    };

    internal sealed record Case(SupplyPoint Point, Figure<ElectricCurrent> Rating, ResidualDevice? Device)
        : Judgement(Point.Address / "origin", Point.Service!.At, Judge(Rating, Device), Doubts.Of(Point.Service.IsOutdoor?.Doubt).With(Device is null ? Rating.RestsOn : Device.DelayRestsOn))
    {
        private static Verdict Judge(Figure<ElectricCurrent> rating, ResidualDevice? device) =>
            rating.Value is not null && (device is null || device.Rating.AtMost(Most) == Verdict.Fails) ? Verdict.Fails
            : device?.IsDelayed is null ? Verdict.CannotBeJudged : Verdict.Holds;
    }
}
