using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/hang-swings</c></summary>
internal sealed class HangSwings : Rule<HangSwings.Case>
{
    public override string Name => "rigging/hang-swings";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "In the gust up to which everything is to stand a hang swings out further than its chains may be off plumb, or nobody knows how far.";

    public override string Why => "It strikes what is beside it and pulls the roof sideways.";

    public override string Cures => "Bring it down earlier and write at which gust, guy it by an engineer's plan, or stack it.";

    public override Publication Source => Handbook.En1991.Forces;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from hang in plan.Rigging.Hangs
        where hang.Wind is not null && hang.Weight.Value is not null
        select new Case(hang, hang.Wind!, Figure.Policy("off-plumb", plan.Brief.Company.Policies.Rigging.OffPlumb));

    protected override Said Say(Case found) => found.Wind.Swing.Value is { } swing
        ? new($"{found.Hang.Stack.Stack.Name} swings {swing} out in a gust of {found.Wind.Gust.Value!.Value}, pushed by {found.Wind.Push.Value!.Value}; {found.Limit.Value!.Value} is the most.", "Bring it down before that gust, guy it by an engineer's plan, or stack it.", $"{swing} in {found.Wind.Gust.Value!.Value}")
        : new($"{found.Hang.Stack.Stack.Name}: nobody knows how far it swings in wind.", "Write the gust up to which all stands, and sizes or areas of its boxes.", $"unknown");

    internal sealed record Case(HangPlan Hang, HangWind Wind, Figure<Angle> Limit)
        : Judgement(Hang.Written / "swing", Hang.Placed.Hang.At, Wind.Swing.AtMost(Limit), Wind.Swing.RestsOn);
}
