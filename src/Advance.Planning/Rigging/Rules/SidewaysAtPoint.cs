using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/sideways-at-point</c></summary>
internal sealed class SidewaysAtPoint : Rule<SidewaysAtPoint.Case>
{
    public override string Name => "rigging/sideways-at-point";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A point is pulled sideways more than its venue allows; one of which nothing is said bears straight down alone.";

    public override string Why => "A beam clamp slides along its beam, a batten rolls.";

    public override string Cures => "Legs of a bridle as a pair on one beam, longer legs, or a venue's engineer who allows it.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Points.Where(point => point.Sideways.Value is { Kilograms: > 0.5 }).Select(point => new Case(point));

    protected override Said Say(Case found) => found.Point.Point.Sideways is { IsKnown: true } allowed
        ? new($"{found.Point.Point.Name} is pulled sideways with {found.Point.Sideways.Value!.Value}, and may be with {allowed.Value}.", "Longer legs, or ask the venue's engineer.", $"{found.Point.Sideways.Value!.Value} of {allowed.Value}")
        : new($"{found.Point.Point.Name} is pulled sideways with {found.Point.Sideways.Value!.Value}, and its venue only says what it bears straight down.", "Ask the venue's engineer what it bears sideways.", $"{found.Point.Sideways.Value!.Value}");

    private static Verdict Judge(PointPlan point) => point.Point.Sideways switch
    {
        null => Verdict.Fails,
        { IsKnown: true } allowed => point.Sideways.Value!.Value <= allowed.Value ? Verdict.Holds : Verdict.Fails,
        _ => Verdict.CannotBeJudged,
    };

    internal sealed record Case(PointPlan Point) : Judgement(Point.Address / "sideways", Point.At, Judge(Point), Point.Sideways.RestsOn.With(Doubts.Of(Point.Point.Sideways?.Doubt)));
}
