using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/bridle-wide</c></summary>
internal sealed class BridleWide : Rule<BridleWide.Case>
{
    public override string Name => "rigging/bridle-wide";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Two legs of a bridle open wider than the company likes.";

    public override string Why => "What a leg and its point carry rises fast from there on.";

    public override string Cures => "Longer legs, or points nearer together.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Bridles.Where(bridle => bridle.Widest.Value is { Degrees: < 120 } && !bridle.Legs.Any(leg => leg.FromHorizontal < 30))
        .Select(bridle => new Case(bridle, plan.Brief.Company.Policies.Rigging.BridleAngle.Degrees));

    protected override Said Say(Case found) => new($"Bridle {found.Bridle.Name}: {found.Bridle.Widest.Value!.Value} between its legs.", "Longer legs, or points nearer together.", $"{found.Bridle.Widest.Value!.Value}");

    internal sealed record Case(BridlePlan Bridle, double Most)
        : Judgement(Bridle.Address / "wide", Bridle.Bridle.At, Bridle.Widest.Value!.Value.Degrees <= Most ? Verdict.Holds : Verdict.Fails, Bridle.Widest.RestsOn);
}
