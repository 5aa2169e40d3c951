using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>stock/too-few</c></summary>
internal sealed class TooFew : Rule<TooFew.Case>
{
    public override string Name => "stock/too-few";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "More pieces of a kind, or cases of one, are in use than the shop has ready, and nothing stands in for them.";

    public override string Why => "What is missing on the shelf is found missing on site, where it cannot be had.";

    public override string Cures => "Hire the missing pieces (a row in extras, from: hire and who), use another kind, or name a substitute in the stock.";

    public override Publication Source => Publication.CommonPractice;

    // What is in no stock has a rule of its own.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Stock.Lines.Where(line => line.Kind is not null).Select(CaseOf);

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new(
            $"{found.Line.Item}: {found.InUse} in use, nobody knows how many are ready.",
            "Write owned in the stock.",
            $"{found.InUse} in use, owned unknown")
        : new(
            $"{found.Line.Item}: {found.InUse} in use, {found.Line.Ready.Value ?? 0} ready, {found.Missing} short.",
            Cure(found),
            $"{found.InUse} in use, {found.Line.Ready.Value ?? 0} ready");

    private static Case CaseOf(StockLine line)
    {
        var missing = line.ShortInUse.Value;
        var verdict = missing is null ? Verdict.CannotBeJudged : missing > 0 ? Verdict.Fails : Verdict.Holds;
        return new Case(line, (line.Total.Value - line.Spare.Value) ?? 0, missing ?? 0, line.At, verdict);
    }

    private static Words Cure(Case found)
    {
        var supplier = found.Line.Kind?.HireFrom is { Length: > 0 } hire ? hire : "a supplier";
        return $"Hire {found.Missing} from {supplier}, or use another kind.";
    }

    internal sealed record Case(StockLine Line, int InUse, int Missing, Mark At, Verdict Verdict)
        : Judgement(Line.Address, At, Verdict, Line.ShortInUse.RestsOn);
}
