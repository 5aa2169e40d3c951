using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/neutral-overload</c></summary>
internal sealed class NeutralOverload : Rule<NeutralOverload.Case>
{
    public override string Name => "power/neutral-overload";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A neutral carries more in use than the connector, and no device looks at it.";

    public override string Why => "Third harmonics of electronic supplies add up in it, and no breaker opens when it burns.";

    public override string Cures => "Put loads with much third harmonic on another feeder, spread loads over the legs, or have a neutral of larger section.";

    public override Publication Source { get; } = new("IEC 60364-4-43: overcurrent in the neutral", "", "431.2", Standing.FromMemory);

    // A draw that nobody knows is asked for by the rule on circuits.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Limits
        where point.Neutral is { InUse.Current.Value: not null } && point.Limit.Value is not null
        select new Case(point, point.Neutral!.InUse);

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new(
            $"{found.Point.Name}: {found.Neutral.Current.Value!.Value} in the neutral ({found.Neutral.Words}) if {Named(found)} have as much third harmonic as the company takes for granted; {found.Point.Limit.Value!.Value} allowed.",
            "Write third-harmonic in the stock.",
            $"{found.Neutral.Current.Value!.Value} of {found.Point.Limit.Value!.Value}")
        : new(
            $"{found.Point.Name}: {found.Neutral.Current.Value!.Value} in the neutral ({found.Neutral.Words}), {found.Point.Limit.Value!.Value} allowed.",
            "Put loads with much third harmonic on another feeder, or spread loads over the legs.",
            $"{found.Neutral.Current.Value!.Value} of {found.Point.Limit.Value!.Value}");

    private static string Named(Case found) =>
        found.Neutral.Assumed.Count > 2 ? $"{found.Neutral.Assumed[0]} and {found.Neutral.Assumed.Count - 1} more" : string.Join(" and ", found.Neutral.Assumed);

    // What one leg carries too much of is told of the leg. What only a policy makes too much is a question.
    private static Verdict Judge(SupplyPoint point, NeutralCase neutral) =>
        neutral.Current.AtMost(point.Limit) == Verdict.Holds || point.Legs.Any(leg => leg.InUse.AtMost(point.Limit) != Verdict.Holds) ? Verdict.Holds
            : neutral.Assumed.Count > 0 ? Verdict.CannotBeJudged
            : Verdict.Fails;

    internal sealed record Case(SupplyPoint Point, NeutralCase Neutral)
        : Judgement(Point.Address / "neutral", Point.At, Judge(Point, Neutral), Neutral.Current.RestsOn.With(Point.Limit.RestsOn));
}
