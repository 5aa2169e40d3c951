using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>rigging/sideways-at-point</c></summary>
internal sealed class SidewaysAtPoint : Rule<SidewaysAtPoint.Case>
{
    public override string Name => "rigging/sideways-at-point";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A point is pulled sideways more than its venue allows, by legs of bridles, chains that lean, wind or lines; one of which nothing is said, and across the line that it may be pulled along, bears no more than a chain that counts as plumb.";

    public override string Why => "A beam clamp slides along its beam, a batten rolls.";

    public override string Cures => "Legs of a bridle as a pair on one beam, longer legs, or a venue's engineer who allows it.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    // What nobody has told is one question, however many points there are.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var pulled = plan.Rigging.Points.Where(point => IsPulled(point.SidewaysMost, point) || (point.Across is { } across && IsPulled(across, point))).ToList();
        var open = pulled.Where(point => point.SidewaysHolds == Verdict.CannotBeJudged).ToList();
        return [.. pulled.Except(open).Select(point => new Case(point, [])), .. open.Count == 0 ? [] : new[] { new Case(open[0], open) }];
    }

    protected override Said Say(Case found) => (found.Point.SidewaysMost.Value, found.Point.Point) switch
    {
        _ when found.Open.Count > 0 => SayOpen(found.Open),
        _ when found.Point is { AcrossHolds: Verdict.Fails, Across.Value: { } across } => new(
            $"{Named(found.Point)} is pulled with {across} across the line, {found.Point.Point.Bearing!.Value.Value} clockwise from upstage, that it may be pulled along.",
            "Legs of a bridle along that line, or ask the venue's engineer.",
            $"{across} across"),
        ({ } most, { Sideways: { IsKnown: true } allowed }) => new($"{Named(found.Point)} is pulled sideways with {most}, and may be with {allowed.Value}.", "Longer legs, or ask the venue's engineer.", $"{most} of {allowed.Value}"),
        ({ } most, { OffPlumb: { IsKnown: true } lean }) => new($"{Named(found.Point)} is pulled sideways with {most}, further off plumb than the {lean.Value} that it may be.", "Longer legs, or ask the venue's engineer.", $"{most} over {lean.Value}"),
        var (most, _) => new($"{Named(found.Point)} is pulled sideways with {most!.Value}, and its venue only says what it bears straight down.", "Ask the venue's engineer what it bears sideways.", $"{most.Value}"),
    };

    // More than rounding leaves.
    private static bool IsPulled(Figure<UnitsNet.Mass> sideways, PointPlan point) => sideways.Value is { Kilograms: > 0.5 } || (sideways.Value is null && (point.Pushed is not null || point.Across is not null));

    private static Words Named(PointPlan point) => point.Point.Made is { IsKnown: true } made ? Words.Of($"{point.Point.Name} ({made.Value.Words()})") : Words.Of($"{point.Point.Name}");

    private static Said SayOpen(IReadOnlyList<PointPlan> open) => open.Select(point => point.SidewaysMost.Value).Max() is { } most
        ? new($"Nobody has told what {Names(open)} may be pulled sideways; {most} pulls at one of them.", "Send the venue the point loads, and have its engineer answer.", $"unknown")
        : new($"Nobody knows what wind and lines push {Names(open)} sideways with.", "Write the gust up to which all stands, and what wind sees of what hangs.", $"unknown");

    private static string Names(IReadOnlyList<PointPlan> points) => string.Join(", ", points.Select(point => point.Point.Name));

    internal sealed record Case(PointPlan Point, IReadOnlyList<PointPlan> Open) : Judgement(
        Open.Count > 0 ? Address.Of("rigging") / "points-sideways" : Point.Address / "sideways",
        Point.At,
        Point.SidewaysHolds,
        Open.Append(Point).Aggregate(Domain.Facts.Doubts.None, (sum, point) => sum.With(point.SidewaysMost.RestsOn).With(point.SidewaysLimit.RestsOn)));
}
