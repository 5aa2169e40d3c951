using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/goes-slack</c></summary>
internal sealed class GoesSlack : Rule<GoesSlack.Case>
{
    public override string Name => "rigging/goes-slack";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A hoist carries nothing in one of the cases that are reckoned with.";

    public override string Why => "What it does not carry is on its neighbours, and a slack chain jumps when it takes up.";

    public override string Cures => "Move the pick under a load, take the hoist out, or spread the load.";

    public override Publication Source => Handbook.Statics.Equilibrium;

    // Where every part bears the worst that can come, a slack chain is no harm.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from truss in plan.Rigging.Trusses
        where truss.Picks.Count > 2
        from pick in truss.Picks
        where pick.Least.Value is not null
        select new Case(pick, truss.BoundUse?.Share <= 1);

    protected override Said Say(Case found) => new($"{found.Pick.Name} carries {found.Pick.Level.Value!.Value} level, and goes slack when the truss is as uneven as it may be at rest.", "Level closely, or move the pick under a load.", $"{found.Pick.Level.Value!.Value}");

    internal sealed record Case(PickPlan Pick, bool IsHarmless)
        : Judgement(Pick.Address / "slack", Pick.Placed.Pick.At, IsHarmless || Pick.Least.Value!.Value.Kilograms > 0 ? Verdict.Holds : Verdict.Fails, Pick.Least.RestsOn);
}
