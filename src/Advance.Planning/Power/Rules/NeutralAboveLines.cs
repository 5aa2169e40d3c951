using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/neutral-above-lines</c></summary>
internal sealed class NeutralAboveLines : Rule<NeutralAboveLines.Case>
{
    // Below half of what the place may carry a neutral as thick as the lines has room. Common practice, no source.
    private const double Light = 0.5;

    public override string Name => "power/neutral-above-lines";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A neutral carries more than the fullest line.";

    public override string Why => "A cable is then chosen by its neutral, and a device that looks at the lines protects nothing.";

    public override string Cures => "Choose the cable by the neutral current, or put loads with much third harmonic elsewhere.";

    public override Publication Source => Handbook.Iec60364.AnnexE;

    // Only where everybody's harmonics are known: what is taken for granted is no news.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Limits
        where point.Neutral is { InUse: { Assumed.Count: 0, Current.Value: not null }, LargestLine.Value: not null } && point.Limit.Value is not null
        select new Case(point, point.Neutral!);

    protected override Said Say(Case found) => new(
        $"{found.Point.Name}: {found.Use.InUse.Current.Value!.Value} in the neutral ({found.Use.InUse.Words}), {found.Use.LargestLine.Value!.Value} in the fullest line.",
        "Choose the cable by the neutral current, or put loads with much third harmonic elsewhere.",
        $"{found.Use.InUse.Current.Value!.Value} over {found.Use.LargestLine.Value!.Value}");

    private static Verdict Judge(SupplyPoint point, NeutralUse use) =>
        use.InUse.Current.AtMost(use.LargestLine) == Verdict.Holds || use.InUse.Current.Value!.Value.Amperes < Light * point.Limit.Value!.Value.Amperes ? Verdict.Holds : Verdict.Fails;

    internal sealed record Case(SupplyPoint Point, NeutralUse Use)
        : Judgement(Point.Address / "neutral", Point.At, Judge(Point, Use), Use.InUse.Current.RestsOn.With(Use.LargestLine.RestsOn));
}
