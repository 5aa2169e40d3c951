using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/side-pull</c></summary>
internal sealed class SidePull : Rule<SidePull.Case>
{
    public override string Name => "rigging/side-pull";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A point, or the hook of a bridle, is not over the pick of a truss or the hole of the frame that hangs on it, or a pull-back leans the chain.";

    public override string Why => "What hangs swings until it is plumb, away from where it is drawn, pulls its point sideways, and a hoist pulled sideways wears and jams.";

    public override string Cures => "A bridle that brings the hook over it, another point, or the place where it does hang.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var most = Figure.Policy("off-plumb", plan.Brief.Company.Policies.Rigging.OffPlumb);
        return
        [
            .. from hang in plan.Rigging.Hangs
               from pick in hang.Picks
               where pick.OffPlumb.Value is not null
               select new Case(pick.Pick, pick.OffPlumb, null, most),
            .. from truss in plan.Rigging.Trusses
               from pick in truss.Picks
               where pick.Lean?.Lean.Value is not null
               select new Case(pick, pick.Lean!.Lean, pick.Lean, most),
        ];
    }

    protected override Said Say(Case found) => new(
        found.Lean is { } lean
            ? Words.Of($"{found.Pick.Name} hangs {lean.Off.Value!.Value} beside {found.Pick.Placed.Pick.Point.Or("its point")}, {found.OffPlumb.Value!.Value} off plumb, and pulls it sideways with {(lean.Pull.Pull.Value is { } pull ? Words.Of($"{pull}") : Words.FromString("nobody knows how much"))}.")
            : Words.Of($"{found.Pick.Name}: its chain is {found.OffPlumb.Value!.Value} off plumb from frame to point, and {found.Limit.Value!.Value} is the most."),
        found.Lean is null ? "Move the hang or the point, or bring the hook over it with a bridle." : "Move the truss or the point, or bring the hook over it with a bridle.",
        $"{found.OffPlumb.Value!.Value}");

    internal sealed record Case(PickPlan Pick, Figure<Angle> OffPlumb, PickLean? Lean, Figure<Angle> Limit)
        : Judgement(Pick.Address / "plumb", Pick.Placed.Pick.At, OffPlumb.AtMost(Limit), OffPlumb.RestsOn);
}
