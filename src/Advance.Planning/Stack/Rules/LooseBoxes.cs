using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>stack/loose-boxes</c></summary>
internal sealed class LooseBoxes : Rule<LooseBoxes.Case>
{
    public override string Name => "stack/loose-boxes";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A stack has boxes that nothing joins, no strap is written, and it stands in the open air, has more boxes, or is higher than the company lets go without one.";

    public override string Why => "What comes down from there comes down on heads.";

    public override string Cures => "Join the boxes, write a strap for the stack, or build it lower.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Sound.Stacks.Select(stack => CaseOf(stack, plan.Brief.Company.Policies.StackStrap, plan.Standing.Site.IsOpenAir == true));

    protected override Said Say(Case found)
    {
        var (stack, limit) = (found.Stack, found.Limit);
        var count = stack.Boxes.Count(box => box.IsLoudspeaker);
        if (found.IsOpenAir)
        {
            return new(
                $"{stack.Stack.Name}: {count} boxes in the open air, not {(found.Verdict == Verdict.Fails ? "all joined" : "known to be joined")} and without a strap.",
                "Write a strap, or join the boxes.",
                $"{count} boxes, loose in wind");
        }

        if (found.Verdict == Verdict.CannotBeJudged)
        {
            return new(
                $"{stack.Stack.Name}: boxes that nothing is known to join, and no strap: not known to be within {limit.Boxes} boxes and {limit.Height}.",
                "Say in the stock how high the boxes are and what joins them, or write a strap.",
                $"{count} boxes, loose, unknown");
        }

        return stack.Height.Value is { } height
            ? new(
                $"{stack.Stack.Name}: {count} boxes, {height} high, not all joined and without a strap; up to {limit.Boxes} boxes and {limit.Height} may be.",
                "Write a strap, or join the boxes.",
                $"{count} boxes, {height}, loose")
            : new(
                $"{stack.Stack.Name}: {count} boxes, not all joined and without a strap; up to {limit.Boxes} boxes and {limit.Height} may be.",
                "Write a strap, or join the boxes.",
                $"{count} boxes, loose");
    }

    private static Case CaseOf(StackPlan stack, StrapLimit limit, bool isOpenAir)
    {
        var loose = stack.Interfaces.Where(touching => touching.WantsJoint && touching.Upper.Joint is null).ToList();
        if (loose.Count == 0 || stack.Stack.Strap is not null)
        {
            return new Case(stack, limit, Verdict.Holds);
        }

        if (isOpenAir)
        {
            return new Case(stack, limit, loose.Exists(touching => touching.IsKnown) ? Verdict.Fails : Verdict.CannotBeJudged) { IsOpenAir = true };
        }

        var isTooMany = stack.Boxes.Count(box => box.IsLoudspeaker) > limit.Boxes;
        var height = stack.Height.AtMost(Figure.Policy("stack-strap", limit.Height));
        var beyond = isTooMany ? Verdict.Fails : height;
        return new Case(stack, limit, beyond == Verdict.Fails && !loose.Exists(touching => touching.IsKnown) ? Verdict.CannotBeJudged : beyond);
    }

    internal sealed record Case(StackPlan Stack, StrapLimit Limit, Verdict Verdict)
        : Judgement(Stack.Written, Stack.Stack.At, Verdict, Stack.RestsOn.With(Stack.Height.RestsOn))
    {
        public bool IsOpenAir { get; init; }
    }
}
