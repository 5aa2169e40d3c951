using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Naming;
using Advance.Domain.Stocks;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>stock/unknown-item</c></summary>
internal sealed class UnknownItem : Rule<UnknownItem.Case>
{
    // What stands where a kind is still an open question; the question is asked already.
    private const string Open = "TBC";

    public override string Name => "stock/unknown-item";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The shop is to bring something that its stock does not have: a slip of the pen, or a kind that nobody entered.";

    public override string Why => "Nobody finds it on a shelf, knows what it weighs, or counts whether there are enough.";

    public override string Cures => "Write the id as the stock has it, enter the kind, or say from: who brings it.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var stock = plan.Brief.Stock;
        if (stock.Kinds.Count == 0)
        {
            return plan.Stock.Lines.Count == 0 ? [] : [NoStock(plan)];
        }

        var lines = plan.Stock.Lines.Where(line => line.Item != Open)
            .Select(line => new Case(line.Address, line.Item, Guess(line.Item, line.Kind, stock), Of(line.Kind), line.At));
        var cases = plan.Stock.Lines.Select(line => line.Kind).OfType<Kind>().Where(kind => kind.Packs is not null)
            .GroupBy(kind => kind.Packs!.Item, StringComparer.Ordinal)
            .Select(group => CaseFor(group.Key, group.First(), stock));
        return [.. lines, .. cases];
    }

    protected override Said Say(Case found) => found.Item.Length == 0
        ? new("No stock is named: nothing that the shop brings can be counted or weighed.", "Name the stock's folder (stock: ../stock).", "no stock")
        : new(
            $"{found.Item} is in no stock.",
            found.Nearest is { } near ? Words.Of($"Write {near}, if that is meant; else enter {found.Item}, or say from: who brings it.") : Words.FromString(Cures),
            $"{found.Item} unknown");

    private static Case NoStock(Plan plan) => new(Address.Of("stock"), "", null, Verdict.Fails, plan.Brief.Gig.At);

    private static Case CaseFor(string item, Kind packed, Stock stock) =>
        new(Address.Of("stock") / item, item, Guess(item, stock.Find(item), stock), Of(stock.Find(item)), packed.At);

    private static Verdict Of(Kind? kind) => kind is null ? Verdict.Fails : Verdict.Holds;

    private static string? Guess(string item, Kind? kind, Stock stock) => kind is null ? Nearest.To(item, stock.Kinds.Keys) : null;

    internal sealed record Case(Address Where, string Item, string? Nearest, Verdict Verdict, Mark At) : Judgement(Where, At, Verdict, Doubts.None);
}
