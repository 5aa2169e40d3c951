using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>patch/too-few-buses</c></summary>
internal sealed class TooFewBuses : Rule<TooFewBuses.Case>
{
    public override string Name => "patch/too-few-buses";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "An act has more mixes than any desk can send.";

    public override string Why => "Somebody shares a mix, or hears nothing, and both are settled by shouting.";

    public override string Cures => "Bring a desk with more mixes, a monitor desk, or put two people on one mix.";

    public override Publication Source => Publication.Arithmetic;

    // Which desk sends the mixes is not said: the one that can send most must do.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var desks = plan.Patch.Desks;
        if (plan.Patch.Returns.Count == 0 || desks.Count == 0)
        {
            return [];
        }

        var best = desks.Where(desk => desk.Buses.Value is not null).MaxBy(desk => desk.Buses.Value);
        var unknown = desks.FirstOrDefault(desk => desk.Buses.Value is null);
        return best is not null && (unknown is null || best.TopMix.AtMost(best.Buses) == Verdict.Holds)
            ? [new Case(best, best.TopMix.AtMost(best.Buses))]
            : [new Case(unknown!, Verdict.CannotBeJudged)];
    }

    protected override Said Say(Case found)
    {
        var (desk, top) = (found.Desk.Desk, found.Desk.TopMix.Value ?? 0);
        return found.Verdict == Verdict.CannotBeJudged
            ? new(
                $"Mix {top} is asked for, and nobody knows how many mixes {desk} can send.",
                "Write buses for its kind in the stock.",
                $"mix {top}, buses unknown")
            : new(
                $"Mix {top} is asked for, and {desk} can send {found.Desk.Buses.Value ?? 0}.",
                "Bring a desk with more mixes, or put two people on one mix.",
                $"mix {top} of {found.Desk.Buses.Value ?? 0}");
    }

    internal sealed record Case(DeskUse Desk, Verdict Verdict)
        : Judgement(Desk.Address, Desk.At, Verdict, Desk.Buses.RestsOn);
}
