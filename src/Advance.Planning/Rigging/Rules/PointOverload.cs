using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/point-overload</c></summary>
internal sealed class PointOverload : Rule<PointOverload.Case>
{
    public override string Name => "rigging/point-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A point of the roof carries more than its venue allows.";

    public override string Why => "The roof comes down, not the truss.";

    public override string Cures => "Spread the load over more points, take weight off, or ask the venue's engineer for a higher limit.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    // Limits that nobody has told are one question, however many points there are.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var points = plan.Rigging.Points.Where(point => point.Counts.Value is not null).ToList();
        var open = points.Where(point => point.Limit.Value is null).ToList();
        return [.. points.Except(open).Select(point => new Case(point, [])), .. open.Count == 0 ? [] : new[] { new Case(open[0], open) }];
    }

    protected override Said Say(Case found) => found.Open.Count > 0
        ? new($"Nobody has told what may hang on {string.Join(", ", found.Open.Select(point => point.Point.Name))}; {found.Open.Select(point => point.Counts.Value!.Value).Max()} hangs on one of them.", "Send the venue the point loads, and have its engineer answer.", $"unknown")
        : new(
            $"{found.Point.Point.Name}: {found.Point.Counts.Value!.Value} ({string.Join(", ", found.Point.Hangs)}), and it may carry {found.Point.Limit.Value!.Value}.",
            "Spread the load over more points, take weight off, or ask the venue's engineer.",
            $"{found.Point.Counts.Value!.Value} of {found.Point.Limit.Value!.Value}");

    internal sealed record Case(PointPlan Point, IReadOnlyList<PointPlan> Open)
        : Judgement(Open.Count > 0 ? Address.Of("rigging") / "points" : Point.Address, Point.At, Point.Holds, Open.Aggregate(Point.Counts.RestsOn.With(Point.Limit.RestsOn), (sum, point) => sum.With(point.Limit.RestsOn)));
}
