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

    public override string Catches => "More pieces of a kind are wanted, spares included, than the shop has ready, and nothing stands in for them.";

    public override string Why => "What is missing on the shelf is found missing on site, where it cannot be had.";

    public override string Cures => "Hire the missing pieces (a row in extras, from: hire and who), use another kind, or name a substitute in the stock.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Stock.Lines.Select(CaseOf);

    protected override Said Say(Case found) => found switch
    {
        { Line.Kind: null } => new(
            $"{found.Line.Item}: {found.Wanted} wanted, in no stock.",
            "Write the id as the stock has it, or say from: who brings it.",
            $"{found.Wanted} wanted, none known"),
        { Verdict: Verdict.CannotBeJudged } => new(
            $"{found.Line.Item}: {found.Wanted} wanted, nobody knows how many are ready.",
            "Write owned in the stock.",
            $"{found.Wanted} wanted, owned unknown"),
        _ => new(
            $"{found.Line.Item}: {found.Wanted} wanted, {found.Line.Ready.Value ?? 0} ready, {found.Missing} short.",
            Cure(found),
            $"{found.Wanted} wanted, {found.Line.Ready.Value ?? 0} ready"),
    };

    private static Case CaseOf(StockLine line)
    {
        var missing = line.Short.Value ?? 0;
        var verdict = line.Short.Value is null ? Verdict.CannotBeJudged : missing > 0 ? Verdict.Fails : Verdict.Holds;
        var at = line.Pieces.Select(piece => piece.Why).OfType<Need.AskedFor>().Select(need => need.At).Order().FirstOrDefault(line.Kind?.At ?? Mark.Nowhere);
        return new Case(line, line.Total.Value ?? 0, missing, at, verdict);
    }

    private static Words Cure(Case found)
    {
        var supplier = found.Line.Kind?.HireFrom is { Length: > 0 } hire ? hire : "a supplier";
        return $"Hire {found.Missing} from {supplier}, or use another kind.";
    }

    internal sealed record Case(StockLine Line, int Wanted, int Missing, Mark At, Verdict Verdict)
        : Judgement(Line.Address, At, Verdict, Line.Short.RestsOn);
}
