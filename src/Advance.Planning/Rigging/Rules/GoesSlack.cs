using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

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
        where truss.Picks.Count > 2 && truss.Picks.Any(pick => pick.Least.Value is not null)
        let slack = truss.Picks.Where(pick => pick.Least.Value is { Kilograms: <= 0 }).ToList()
        select new Case(truss, slack, truss.BoundUse?.Share <= 1);

    protected override Said Say(Case found) => found.Slack is [var only]
        ? new($"{only.Name} carries {only.Level.Value!.Value} level, and goes slack when the truss is as uneven as it may be at rest.", "Level closely, or move the pick under a load.", $"{only.Level.Value!.Value}")
        : new($"{FewNames.Of([.. found.Slack.Select(pick => pick.Name)])} carry {Levels(found.Slack)} level, and each goes slack when the truss is as uneven as it may be at rest.", "Level closely, or move picks under loads.", Levels(found.Slack));

    private static Words Levels(IReadOnlyList<PickPlan> picks) =>
        picks.Skip(1).Aggregate(Words.Of($"{picks[0].Level.Value!.Value}"), (said, pick) => $"{said}, {pick.Level.Value!.Value}");

    // One truss, one cause: it stands at the first pick that goes slack.
    internal sealed record Case(TrussPlan Truss, IReadOnlyList<PickPlan> Slack, bool IsHarmless)
        : Judgement(Truss.Address / "slack", Slack.Count > 0 ? Slack[0].Placed.Pick.At : Truss.Placed.Truss.At, IsHarmless || Slack.Count == 0 ? Verdict.Holds : Verdict.Fails, Truss.RestsOn);
}
