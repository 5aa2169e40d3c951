using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/all-restart-together</c></summary>
internal sealed class AllRestartTogether : Rule<AllRestartTogether.Case>
{
    public override string Name => "power/all-restart-together";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "After a blip all that hangs on a service starts at once, which is more than its breaker lets through or its generator takes.";

    public override string Why => "Nobody stands at the switches when the mains come back: an order on paper does not help.";

    public override string Cures => "Units that start later by themselves, contactors that stay open until somebody closes them, or a breaker of a slower type.";

    public override Publication Source => Iec60898.Instantaneous;

    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. from power in plan.Power.Powers
           where power.Service.Loads.Count > 0 && power.Service.Service is { Device: { IsKnown: true } device } && Breakers.TypeOf(device.Value) is not null
           let most = Threshold(power.Service, Breakers.TypeOf(power.Service.Service!.Device!.Value.Value)!.Value)
           select new Case(power.Service, "device", power.RestartInrush.AtMost(most), power.RestartInrush.RestsOn.With(most.RestsOn), Device(power, most)),
        .. from set in plan.Power.Generators
           where set.MostStep?.Value is not null && set.Restart.Value is not null && set.Service.Loads.Count > 0
           select new Case(set.Service, "generator", set.Restart.AtMost(set.MostStep!), set.Restart.RestsOn.With(set.MostStep!.RestsOn), Step(set)),
    ];

    protected override Said Say(Case found) => found.Said;

    private static Figure<ElectricCurrent> Threshold(SupplyPoint point, BreakerType type) =>
        Sum.Of($"{point.Name}, lowest instantaneous tripping", "I = k · n", Iec60898.Instantaneous)
            .Put("k", Figure.Count(Breakers.HoldsBelow(type)))
            .Put("n", Figure.From(point.Service!.Rating))
            .Gives((times, rated) => rated * times);

    private static Said Device(ServicePower power, Figure<ElectricCurrent> most) => (power.RestartInrush.Value, most.Value) is ({ } rms, { } limit)
        ? new(
            $"{power.Service.Name}: {rms} when all on it start at once after a blip, and its {power.Service.Service!.Device!.Value.Value} may open from {limit}.",
            "Units that start later by themselves, contactors that stay open, or a breaker of a slower type.",
            $"{rms} of {limit}")
        : new($"{power.Service.Name}: nobody knows what all on it draw when the mains come back, or what its device is rated at.", "Write inrush in the stock, and the rating of the service.", $"unknown");

    private static Said Step(GeneratorPlan set) => new(
        $"{set.Service.Name}: {set.Restart.Value!.Value} of its rating comes on at once after a blip, {set.MostStep!.Value!.Value} is the largest step it takes.",
        "Units that start later by themselves, or contactors that stay open until somebody closes them.",
        $"{set.Restart.Value!.Value} of {set.MostStep!.Value!.Value}");

    internal sealed record Case(SupplyPoint Point, string What, Verdict Verdict, Domain.Facts.Doubts RestsOn, Said Said)
        : Judgement(Point.Address / "restart" / What, Point.At, Verdict, RestsOn);
}
