using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/side-pull</c></summary>
internal sealed class SidePull : Rule<SidePull.Case>
{
    public override string Name => "rigging/side-pull";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A point is not over the hole of the frame that hangs on it, or a pull-back leans the chain.";

    public override string Why => "The hang swings until it is plumb, away from where it is drawn, and a hoist pulled sideways wears and jams.";

    public override string Cures => "A bridle that brings the hook over the hang, another point, or the place where it does hang.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Rigging.Hangs
        from pick in hang.Picks
        where pick.OffPlumb.Value is not null
        select new Case(hang, pick, Figure.Policy("off-plumb", plan.Brief.Company.Policies.Rigging.OffPlumb));

    protected override Said Say(Case found) => new(
        $"{found.Pick.Pick.Name}: its chain is {found.Pick.OffPlumb.Value!.Value} off plumb from frame to point, and {found.Limit.Value!.Value} is the most.",
        "Move the hang or the point, or bring the hook over it with a bridle.",
        $"{found.Pick.OffPlumb.Value!.Value}");

    internal sealed record Case(HangPlan Hang, HangPickPlan Pick, Figure<Angle> Limit)
        : Judgement(Pick.Pick.Address / "plumb", Pick.Pick.Placed.Pick.At, Pick.OffPlumb.AtMost(Limit), Pick.OffPlumb.RestsOn);
}
