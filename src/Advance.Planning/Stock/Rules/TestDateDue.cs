using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary><c>stock/test-date-due</c></summary>
internal sealed class TestDateDue : Rule<TestDateDue.Case>
{
    public override string Name => "stock/test-date-due";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Too few pieces of a kind are left whose next test falls on the show day or later.";

    public override string Why => "What is out of test may not be used, and is taken away where an inspector finds it.";

    public override string Cures => "Test the pieces before they are packed and write the new date, or use others.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.ShowDate is { } show ? plan.Stock.Lines.Where(line => line.Kind?.Serials.Any(serial => serial.TestDue is not null) == true).Select(line => CaseOf(line, show)) : [];

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new(
            $"{found.Line.Item}: {found.Wanted} wanted; nobody knows when {string.Join(", ", found.Open)} must be tested.",
            "Write test-due in the stock.",
            $"{found.Open.Count} test dates unknown")
        : new(
            $"{found.Line.Item}: {found.Wanted} wanted, {found.InDate} in test on {found.Show}; {string.Join(", ", found.Overdue)} due before.",
            "Test before packing and write the new date, or use others.",
            $"{found.Wanted} wanted, {found.InDate} in test");

    private static Case CaseOf(StockLine line, DateOnly show)
    {
        var dated = line.Kind!.Serials.Where(serial => serial.TestDue is not null).ToList();
        var overdue = dated.Where(serial => serial.TestDue!.Value.Is(out var due) && due.Resolve(show) < show).ToList();
        var open = dated.Where(serial => !serial.TestDue!.Value.IsKnown).ToList();
        var (ready, wanted) = (line.Ready.Value, Math.Min(line.Total.Value ?? 0, line.Ready.Value ?? int.MaxValue));
        var verdict = overdue.Count == 0 && open.Count == 0
            ? Verdict.Holds
            : ready is not { } there ? Verdict.CannotBeJudged
            : wanted > there - overdue.Count ? Verdict.Fails
            : wanted > there - overdue.Count - open.Count ? Verdict.CannotBeJudged : Verdict.Holds;
        var doubts = dated.Aggregate(line.Total.RestsOn, (sum, serial) => sum.With(Doubts.Of(serial.TestDue!.Value.Doubt)));
        var at = overdue.Concat(open).Select(serial => serial.At).FirstOrDefault(line.Kind.At);
        return new Case(line, show, wanted, (ready ?? 0) - overdue.Count, Names(overdue), Names(open), at, verdict, doubts);
    }

    private static List<string> Names(IEnumerable<SerialRow> serials) => [.. serials.Select(serial => serial.Serial)];

    internal sealed record Case(
        StockLine Line, DateOnly Show, int Wanted, int InDate, IReadOnlyList<string> Overdue, IReadOnlyList<string> Open, Mark At, Verdict Verdict, Doubts RestsOn)
        : Judgement(Line.Address, At, Verdict, RestsOn);
}
