using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary><c>sound/not-crossed</c></summary>
internal sealed class NotCrossed : Rule<NotCrossed.Case>
{
    public override string Name => "sound/not-crossed";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A stack has subs and tops, or a crossover is written for it, and nothing on the way to a box does it.";

    public override string Why => "Tops that get the lows sound thin and break, and subs that get the voices blur them.";

    public override string Cures => "Write where it is crossed, feed the tops from a link that hands on high-passed, or give them outputs of their own with tops-fed-by.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => CrossedStack.Of(plan).Select(CaseOf).OfType<Case>();

    protected override Said Say(Case found)
    {
        var (stack, item) = (found.Crossed.Stack.Stack.Name, found.Box!.Box.Piece.Item);
        if (found.Verdict == Verdict.CannotBeJudged)
        {
            return new(
                $"{stack}: whether {item} is crossed is not known.",
                "Write crossover, and hands-on of the links in the stock.",
                $"{item}, unknown");
        }

        return found.Crossed.Stack.Stack.Crossover is { IsKnown: true } given
            ? Say(stack, item, given.Value, found)
            : new(
                $"{stack}: nobody says where {found.Crossed.Subs[0].Box.Piece.Item} and {item} are crossed, and nothing on the way does it.",
                "Write crossover: the frequency, and the box or processor that does it.",
                $"{item}, not crossed");
    }

    private static Said Say(string stack, string item, Crossover crossover, Case found)
    {
        var within = crossover.Within;
        var there = found.Box!.Crossings.LastOrDefault(crossing => crossing.By == within);
        var isBox = found.Crossed.Subs.Any(sub => sub.Box.Piece.Item == within);
        var (why, cure) = (there, isBox) switch
        {
            ({ IsDone: false }, _) when IsMixed(found) => ($"subs and tops hang on one output of {within}", "Give the tops outputs of their own with tops-fed-by."),
            ({ IsDone: false }, _) => ($"{within} has no such filter", "Cross in something that can."),
            (_, true) => ($"the link of {within} hands on the full signal", $"Cross in a processor, or use a sub whose link hands on high-passed."),
            _ => ($"{within} is not on its way", "Write the item of the sub, or the processor that drives the stack."),
        };
        return new($"{stack}: {item} is to be crossed at {crossover.Frequency} in {within}, but {why}.", cure, $"{item}, {crossover.Frequency} in {within}");
    }

    private static bool IsMixed(Case found) => found.Box!.Output is { } output && output.Feeds.Any(fed => fed.Box.IsSub) && output.Feeds.Any(fed => !fed.Box.IsSub);

    private static Case? CaseOf(CrossedStack crossed)
    {
        var isWritten = crossed.Stack.Stack.Crossover is not null;
        if (crossed.Tops.Count > 0 && (crossed.Subs.Count > 0 || isWritten))
        {
            return Worst(crossed, crossed.Tops, Filter.HighPass);
        }

        return crossed.Subs.Count > 0 && isWritten ? Worst(crossed, crossed.Subs, Filter.LowPass) : null;
    }

    private static Case Worst(CrossedStack crossed, IReadOnlyList<DrivenBox> boxes, Filter filter)
    {
        var judged = boxes.Select(box => (Box: box, Verdict: Judge(crossed, crossed.On(box, filter)))).ToList();
        var worst = judged.Find(one => one.Verdict == Verdict.Fails);
        worst = worst.Box is null ? judged.Find(one => one.Verdict == Verdict.CannotBeJudged) : worst;
        return worst.Box is null ? new Case(crossed, null, Verdict.Holds) : new Case(crossed, worst.Box, worst.Verdict);
    }

    private static Verdict Judge(CrossedStack crossed, IReadOnlyList<Crossing> crossings)
    {
        if (crossings.Any(crossing => crossing.IsDone == true && crossed.Protects(crossing) == false))
        {
            return Verdict.Holds;
        }

        var isOpen = crossed.Stack.Stack.Crossover is { IsKnown: false } || crossings.Any(crossing => crossing.IsDone is null || crossed.Protects(crossing) is null);
        return isOpen ? Verdict.CannotBeJudged : Verdict.Fails;
    }

    internal sealed record Case(CrossedStack Crossed, DrivenBox? Box, Verdict Verdict)
        : Judgement(Crossed.Stack.Written / "crossover", Crossed.At, Verdict, Crossed.RestsOn);
}
