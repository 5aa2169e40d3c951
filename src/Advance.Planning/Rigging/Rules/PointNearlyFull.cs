using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/point-nearly-full</c></summary>
internal sealed class PointNearlyFull : Rule<PointNearlyFull.Case>
{
    public override string Name => "rigging/point-nearly-full";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A point of the roof carries nearly all that its venue allows.";

    public override string Why => "A weight that was a guess, or one more thing on the truss on the day, is then too much for the roof.";

    public override string Cures => "One more point, less weight, or weights as weighed.";

    public override Publication Source => Publication.CommonPractice;

    // Where it carries more, or nobody knows, another rule says so.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Rigging.Points
        where point.Holds == Verdict.Holds
        select new Case(point, plan.Brief.Company.Policies.Rigging.Use);

    protected override Said Say(Case found) => new(
        $"{found.Point.Point.Name}: {found.Point.Counts.Value!.Value} of {found.Point.Limit.Value!.Value} ({string.Join(", ", found.Point.Hangs)}).",
        "One more point, less weight, or weights as weighed.",
        $"{found.Point.Counts.Value!.Value} of {found.Point.Limit.Value!.Value}");

    internal sealed record Case(PointPlan Point, double Use) : Judgement(
        Point.Address / "nearly",
        Point.At,
        NearLimit.Is(Point.Counts, Point.Limit, Use) ? Verdict.Fails : Verdict.Holds,
        Point.Counts.RestsOn.With(Point.Limit.RestsOn));
}
