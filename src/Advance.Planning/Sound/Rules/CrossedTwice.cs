using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>sound/crossed-twice</c></summary>
internal sealed class CrossedTwice : Rule<CrossedTwice.Case>
{
    public override string Name => "sound/crossed-twice";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "More than one place on the way to a box parts lows from highs, such as a processor and the link of a sub.";

    public override string Why => "Two crossovers in a row cut a hole where the sub and its tops should meet, and nobody finds it by ear in time.";

    public override string Cures => "Let one place cross: leave the processor's outputs at full range where the sub hands on the high-passed signal.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => CrossedStack.Of(plan).Select(CaseOf);

    protected override Said Say(Case found)
    {
        var (stack, by) = (found.Crossed.Stack.Stack.Name, found.By);
        Words where = by.Count > 1 ? $"in {string.Join(" and again in ", by)}" : $"twice, by one {by[0]} after another";
        return found.Verdict == Verdict.CannotBeJudged
            ? new(
                $"{stack}: whether {found.Item} is crossed {where} is not known, for nobody says at what frequency it is crossed.",
                "Write crossover.",
                $"{found.Item}, crossover unknown")
            : new(
                $"{stack}: {found.Item} is crossed {where}; one place may.",
                "Leave out the crossing that is not wanted, or feed the box from before it.",
                $"{found.Item}, {string.Join(", ", by)}");
    }

    // A sub gets no highs taken out twice, and no lows taken out at all.
    private static Case CaseOf(CrossedStack crossed)
    {
        var worst = new Case(crossed, "", [], Verdict.Holds);
        foreach (var box in crossed.Subs.Concat(crossed.Tops))
        {
            foreach (var filter in new[] { Filter.HighPass, Filter.LowPass })
            {
                var on = crossed.On(box, filter);
                var verdict = crossed.AtMost(on, box.Box.IsSub && filter == Filter.HighPass ? 0 : 1);
                if (IsWorse(verdict, worst.Verdict))
                {
                    worst = new Case(crossed, box.Box.Piece.Item, [.. Names(box, on)], verdict);
                }
            }
        }

        return worst;
    }

    // What takes the lows from a sub stands before the sub's own crossing.
    private static IEnumerable<string> Names(DrivenBox box, IReadOnlyList<Crossing> crossings)
    {
        var own = box.Crossings.Where(crossing => box.Box.IsSub && crossing.Filter == Filter.LowPass);
        return crossings.Concat(own).Select(crossing => crossing.By).Distinct(StringComparer.Ordinal);
    }

    private static bool IsWorse(Verdict verdict, Verdict than) => Rank(verdict) > Rank(than);

    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Fails => 2,
        Verdict.CannotBeJudged => 1,
        _ => 0,
    };

    internal sealed record Case(CrossedStack Crossed, string Item, IReadOnlyList<string> By, Verdict Verdict)
        : Judgement(Crossed.Stack.Written / "crossover", Crossed.At, Verdict, Crossed.RestsOn);
}
