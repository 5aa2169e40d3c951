using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/hoist-nearly-full</c></summary>
internal sealed class HoistNearlyFull : Rule<HoistNearlyFull.Case>
{
    public override string Name => "rigging/hoist-nearly-full";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A hoist bears nearly all that it may.";

    public override string Why => "A weight that was a guess, or a hand's breadth out of level, is then too much.";

    public override string Cures => "A stronger hoist, one more pick, or weights as weighed.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from pick in plan.Rigging.Picks
        where pick.Hoist.Value is not null && pick.Rating.Value is not null && pick.Hoist.AtMost(pick.Rating) == Verdict.Holds
        select new Case(pick, plan.Brief.Company.Policies.Rigging.Use);

    protected override Said Say(Case found) => new(
        $"{found.Pick.Name}: {found.Pick.Hoist.Value!.Value} of {found.Pick.Rating.Value!.Value} on the hoist while it moves.",
        "A stronger hoist, one more pick, or weights as weighed.",
        $"{found.Pick.Hoist.Value!.Value} of {found.Pick.Rating.Value!.Value}");

    private static Verdict Judge(PickPlan pick, double use) =>
        pick.Hoist.Value!.Value.Kilograms <= use / 100 * pick.Rating.Value!.Value.Kilograms ? Verdict.Holds : Verdict.Fails;

    internal sealed record Case(PickPlan Pick, double Use) : Judgement(Pick.Address / "nearly", Pick.Placed.Pick.At, Judge(Pick, Use), Pick.Hoist.RestsOn);
}
