using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>cable/none-long-enough</c></summary>
internal sealed class NoneLongEnough : Rule<NoneLongEnough.Case>
{
    public override string Name => "cable/none-long-enough";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "No leads that the shop owns go from one connector to the other, or none that can be joined are long enough, however many there are.";

    public override string Why => "What cannot be connected stays silent or dark, and is found out on site.";

    public override string Cures => "Hire the lead or the adapter and add its kind to the stock, or move one of the ends.";

    public override Publication Source => Publication.Arithmetic;

    // Without any cables in its stock a shop does not plan them with this.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        if (!plan.Brief.Stock.Kinds.Values.Any(kind => kind.Cable is not null))
        {
            return [];
        }

        var unmeasured = plan.Brief.Stock.Kinds.Values.Where(kind => kind.Cable is { Length.IsKnown: false }).Select(kind => kind.Cable!.Carries).ToHashSet(StringComparer.Ordinal);
        return plan.Cables.Runs.Where(run => run.Gap != RunGap.NotKnown)
            .GroupBy(run => run.Gap == RunGap.NothingMates ? LeadNeed.Of(run) : run.Address.Text, StringComparer.Ordinal)
            .Select(runs => CaseOf([.. runs], unmeasured));
    }

    protected override Said Say(Case found)
    {
        var (run, runs, lead) = (found.Runs[0], RunNames.Count(found.Runs.Count), RunNames.Of(found.Runs));
        if (found.Verdict == Verdict.CannotBeJudged)
        {
            return new(
                $"{lead}: no lead of known length is long enough, and the stock has some of unknown length.",
                "Write the length in the stock.",
                $"{runs}, lengths unknown");
        }

        return run.Gap == RunGap.NothingMates
            ? new(
                $"{runs} ({lead}): no owned lead carries {LeadNeed.Of(run)}.",
                "Hire the lead or an adapter, and add its kind to the stock.",
                $"{runs} of {LeadNeed.Of(run)}")
            : new(
                $"{lead}: {found.Needed} needed, owned leads make {run.Longest} at most.",
                "Hire a longer lead and add its kind to the stock, or move one of the ends.",
                $"{found.Needed} needed, {run.Longest} at most");
    }

    private static Case CaseOf(IReadOnlyList<Run> runs, HashSet<string> unmeasured)
    {
        var fails = runs[0].Gap is RunGap.NothingMates or RunGap.NoneLongEnough;
        var verdict = !fails ? Verdict.Holds : unmeasured.Contains(runs[0].Link.Carries) ? Verdict.CannotBeJudged : Verdict.Fails;
        return new Case(runs, runs[0].Needed.Value ?? Length.Zero, verdict);
    }

    internal sealed record Case(IReadOnlyList<Run> Runs, Length Needed, Verdict Verdict)
        : Judgement(Runs[0].Address, Runs[0].Link.At, Verdict, Runs[0].Needed.RestsOn);
}
