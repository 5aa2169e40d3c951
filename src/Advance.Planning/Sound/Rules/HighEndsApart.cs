using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>sound/high-ends-apart</c></summary>
internal sealed class HighEndsApart : Rule<HighEndsApart.Case>
{
    public override string Name => "sound/high-ends-apart";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Boxes that may be paired stand on each other, but not turned so that the ends meet that the stock says.";

    public override string Why => "Two sources of highs that far apart fight each other where the audience is; together they throw as one.";

    public override string Cures => "Write upside-down after one of the two, so that their high-frequency ends are together.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from stack in plan.Sound.Stacks
        from run in Pairs.Runs(stack.Boxes)
        select CaseOf(stack, run);

    protected override Said Say(Case found)
    {
        var (stack, run) = (found.Stack.Stack.Name, found.Run);
        var item = run[0].Piece.Item;
        return found.Verdict == Verdict.CannotBeJudged
            ? new(
                $"{stack}: {item} may be paired, and the stock does not say which ends then meet.",
                "Write paired-ends in the stock.",
                $"{run.Count} x {item}, ends unknown")
            : new(
                $"{stack}: {run.Count} x {item} stand on each other, and {found.Paired} of {run.Count / 2} pairs have their ends together.",
                $"Write upside-down after every other {item}.",
                $"{found.Paired} of {run.Count / 2} pairs");
    }

    private static Case CaseOf(StackPlan stack, IReadOnlyList<StackedBox> run)
    {
        var paired = run.Count(box => box.PairedWith > box.Position);
        var isUnsaid = run.Zip(run.Skip(1)).Any(two => Pairs.AreMet(two.First, two.Second) is null);
        return new Case(stack, run, paired, isUnsaid ? Verdict.CannotBeJudged : paired < run.Count / 2 ? Verdict.Fails : Verdict.Holds);
    }

    internal sealed record Case(StackPlan Stack, IReadOnlyList<StackedBox> Run, int Paired, Verdict Verdict)
        : Judgement(Stack.Written / "pairs" / Run[0].Position, Stack.Stack.At, Verdict, Stack.RestsOn);
}
