using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/near-slack</c></summary>
internal sealed class NearSlack : Rule<NearSlack.Case>
{
    public override string Name => "rigging/near-slack";

    public override Severity Severity => Severity.Note;

    public override string Catches => "A hoist carries little of what it carries level in one of the cases that are reckoned with.";

    public override string Why => "It is the first to go slack when something is heavier than written.";

    public override string Cures => "Level closely, or move the pick under a load.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from truss in plan.Rigging.Trusses
        where truss.Picks.Count > 2
        from pick in truss.Picks
        where pick.Least.Value?.Kilograms > 0 && pick.Level.Value is not null
        select new Case(pick, plan.Brief.Company.Policies.Rigging.LeastPick);

    protected override Said Say(Case found) => new($"{found.Pick.Name} carries {found.Pick.Level.Value!.Value} level and {found.Pick.Least.Value!.Value} at least.", "Level closely, or move the pick under a load.", $"{found.Pick.Least.Value!.Value}");

    private static Verdict Judge(PickPlan pick, double least) =>
        pick.Least.Value!.Value.Kilograms >= least / 100 * pick.Level.Value!.Value.Kilograms ? Verdict.Holds : Verdict.Fails;

    internal sealed record Case(PickPlan Pick, double Least) : Judgement(Pick.Address / "near-slack", Pick.Placed.Pick.At, Judge(Pick, Least), Pick.Least.RestsOn);
}
