using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using Advance.Domain.Wording;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/continuous-load-too-high</c></summary>
internal sealed class ContinuousLoadTooHigh : Rule<ContinuousLoadTooHigh.Case>
{
    public override string Name => "power/continuous-load-too-high";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "In North America: what runs for three hours or more, taken one and a quarter times, and the rest are more than a device is rated for.";

    public override string Why => "A breaker that is not listed for its whole rating opens after an hour or two at nine tenths of it.";

    public override string Cures => "Move loads to another circuit or service, or write continuous: no for what never runs so long.";

    public override Publication Source => Nec.ContinuousLoad;

    // What is over its rating anyhow is told by another rule.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Limits
        where point.Rules == WiringRules.Nec && point.Limit.Value is not null
        from use in point.Legs.Index()
        where use.Item.InUse.AtMost(point.Limit) == Verdict.Holds
        let longest = Long(point, point.Lines[use.Index])
        select new Case(point, use.Item, Required(point, use.Item, longest), longest.Any(load => load.Continuous is not { IsKnown: true }));

    protected override Said Say(Case found) => new(
        $"{found.Name}: device for {found.Required.Value!.Value} wanted with what runs three hours or more at one and a quarter{Guessed(found)}, {found.Point.Limit.Value!.Value} there.",
        "Move loads to another circuit or service, or write continuous: no for what never runs so long.",
        $"{found.Required.Value!.Value} of {found.Point.Limit.Value!.Value}");

    private static Words Guessed(Case found) => found.Verdict == Verdict.CannotBeJudged ? (Words)$" (not said of all: taken as so)" : $"";

    // What nobody says may run all evening.
    private static List<PowerLoad> Long(SupplyPoint point, int line) =>
        [.. point.Draws.Where(draw => draw.Wiring.Lines.Contains(line) && draw.Load.Continuous is not { IsKnown: true, Value: false }).Select(draw => draw.Load)];

    // N + 1.25 · C, with N + C added as phasors: never less than the rule asks.
    private static Figure<ElectricCurrent> Required(SupplyPoint point, LegUse use, List<PowerLoad> loads) =>
        Sum.Of($"{point.Name} {use.Leg}, rating wanted", "I = i + 0.25 · Σ cᵢ", Nec.ContinuousLoad)
            .Put("i", use.InUse)
            .PutAll("cᵢ", loads.Select(load => load.InUse))
            .Gives((all, continuous) => all + ElectricCurrent.FromAmperes(0.25 * continuous.Values.Sum(one => one.Amperes)));

    private static Verdict Judge(Figure<ElectricCurrent> required, Figure<ElectricCurrent> limit, bool isGuessed) =>
        required.AtMost(limit) == Verdict.Fails && isGuessed ? Verdict.CannotBeJudged : required.AtMost(limit);

    internal sealed record Case(SupplyPoint Point, LegUse Use, Figure<ElectricCurrent> Required, bool IsGuessed)
        : Judgement(Point.Address / "continuous", Point.At, Judge(Required, Point.Limit, IsGuessed), Required.RestsOn.With(Point.Limit.RestsOn))
    {
        public string Name => Use.Leg.Length > 0 ? $"{Point.Name} {Use.Leg}" : Point.Name;
    }
}
