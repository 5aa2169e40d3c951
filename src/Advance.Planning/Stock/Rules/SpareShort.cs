using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>stock/spare-short</c></summary>
internal sealed class SpareShort : Rule<SpareShort.Case>
{
    public override string Name => "stock/spare-short";

    public override Severity Severity => Severity.Note;

    public override string Catches => "There is enough of a kind for what is in use, but fewer spares than policy asks for.";

    public override string Why => "The first that breaks cannot be replaced on site.";

    public override string Cures => "Hire one more (a row in extras, from: hire and who), name a substitute in the stock, or take the risk.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Stock.Lines.Where(line => line is { Kind: not null, Short.Value: not null, Spare.Value: > 0, ShortInUse.Value: 0 }).Select(CaseOf);

    protected override Said Say(Case found)
    {
        var (wanted, line) = (found.Line.Spare.Value ?? 0, found.Line);
        return new(
            $"{line.Item}: {line.Need.Value ?? 0} in use and {wanted} spare wanted, {line.Ready.Value ?? 0} ready, {found.Missing} short.",
            Cure(found),
            $"{wanted} spare wanted, {found.Missing} short");
    }

    private static Case CaseOf(StockLine line) =>
        new(line, line.Short.Value ?? 0, line.At, line.Short.Value > 0 ? Verdict.Fails : Verdict.Holds);

    private static Words Cure(Case found)
    {
        var supplier = found.Line.Kind?.HireFrom is { Length: > 0 } hire ? hire : "a supplier";
        return $"Hire {found.Missing} from {supplier}, or take the risk.";
    }

    internal sealed record Case(StockLine Line, int Missing, Mark At, Verdict Verdict)
        : Judgement(Line.Address, At, Verdict, Line.Short.RestsOn);
}
