using Advance.Domain.Facts;
using Advance.Domain.Wording;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the pull list.</summary>
internal static class PullListViews
{
    private const int MostNames = 2;

    /// <summary>The pull list of the whole gig.</summary>
    public static PullListView Of(Plan plan)
    {
        var speech = Speech.Of(plan.Brief.Company.Units);
        var cells = new Cells(speech);
        var departments = plan.Stock.Lines
            .GroupBy(line => line.Kind?.Department ?? "In no stock", StringComparer.Ordinal)
            .Select(group => Department(group.Key, [.. group], cells, speech));
        var others = plan.Stock.FromOthers
            .GroupBy(piece => (From: piece.From.Is(out var owner) ? OwnerWords.Of(owner) : "?", piece.Item))
            .OrderBy(group => group.Key.From, StringComparer.Ordinal)
            .ThenBy(group => group.Key.Item, StringComparer.Ordinal)
            .Select(group => OtherOf([.. group], cells));
        return new PullListView(
            [.. departments],
            [.. others],
            [
                new PairView("Lines", Cell.Number(plan.Stock.Lines.Count)),
                new PairView("Pieces", cells.Of(plan.Load.Pieces)),
                new PairView("Weight without cases", cells.WithUnit(plan.Load.Weight)),
            ],
            Cells.Head(plan.Stock.Lines.Aggregate(Doubts.None, (sum, line) => sum.With(line.Total.RestsOn))));
    }

    private static PullListView.Department Department(string name, IReadOnlyList<StockLine> lines, Cells cells, Speech speech)
    {
        var pieces = lines.Sum(line => line.Total.Value ?? 0);
        var known = lines.All(line => WeightOf(line) is not null);
        var weight = UnitsNet.Mass.FromKilograms(lines.Sum(line => WeightOf(line)?.Kilograms ?? 0));
        var foot = $"{Counted(lines.Count, "line")}, {Counted(pieces, "piece")}, {(known ? speech.Say(weight) : "weight not known")}";
        return new PullListView.Department(name, [.. lines.Select(line => LineOf(line, cells, speech))], foot);
    }

    private static PullListView.Line LineOf(StockLine line, Cells cells, Speech speech) => new(
        Cell.Of(line.Kind?.Shelf ?? ""),
        Short(cells.Of(line.Need)),
        line.Spare.Value is 0 ? Cell.Blank : cells.Of(line.Spare) with { Tbc = null },
        cells.Of(line.Total) with { Strong = true, Tbc = null },
        Cell.Of(line.Kind?.Packs is { } packs ? $"{packs.Count} a {packs.Item}" : "each"),
        Cell.Of(line.Kind?.Name ?? line.Item),
        Cell.Of(line.Item),
        Weight(line, speech),
        Cell.Of(NamesOf(line.Pieces)),
        Missing(line),
        Cell.Of(string.Join("; ", Remarks(line))) with { Tbc = cells.NoteOf(line.Need.RestsOn) });

    // Who must answer stands in the remark, where there is room for it.
    private static Cell Short(Cell cell) => cell.Tbc is null ? cell : cell with { Tbc = "" };

    private static UnitsNet.Mass? WeightOf(StockLine line) =>
        line.Kind?.Weight is { } given && given.Is(out var weight) && line.Total.Value is { } count ? weight * count : null;

    private static Cell Weight(StockLine line, Speech speech)
    {
        if (WeightOf(line) is not { } weight)
        {
            return new Cell("?") { Verdict = Verdict.CannotBeJudged };
        }

        var amount = speech.Units == UnitSystem.Metric ? weight.Kilograms : weight.Pounds;
        return Cell.Number(amount, Numbers.Plain(amount, amount < 1 ? 2 : 1));
    }

    private static Cell Missing(StockLine line)
    {
        if (line.Short.Value is not > 0)
        {
            return line.Short.Value is null ? new Cell("not known") { Verdict = Verdict.CannotBeJudged } : Cell.Blank;
        }

        var from = line.Kind?.HireFrom is { Length: > 0 } hire ? $", hire {hire}" : "";
        return new Cell($"{line.Short.Value} short{from}") { Verdict = Verdict.Fails };
    }

    private static IEnumerable<string> Remarks(StockLine line)
    {
        if (line.Kind is { OutForRepair: > 0 and var broken })
        {
            yield return $"{broken} out for repair";
        }

        if (line.Hired.Value is > 0 and var hired)
        {
            yield return $"{hired} on hire";
        }

        foreach (var other in line.Covered)
        {
            yield return $"{other.Count} {other.Item} instead";
        }

        if (line.StandingIn > 0)
        {
            yield return $"{line.StandingIn} of them stand in for another kind";
        }
    }

    private static PullListView.Other OtherOf(IReadOnlyList<Piece> pieces, Cells cells) => new(
        cells.Of(pieces[0].From),
        Cell.Number(pieces.Count) with { Strong = true },
        Cell.Of(pieces[0].Kind?.Name ?? pieces[0].Item),
        Cell.Of(NamesOf(pieces)));

    private static string NamesOf(IReadOnlyList<Piece> pieces)
    {
        var names = pieces.Where(piece => piece.Name != piece.Item).Select(piece => piece.Name).Distinct(StringComparer.Ordinal).ToList();
        var shown = string.Join(", ", names.Take(MostNames));
        return names.Count > MostNames ? $"{shown} + {names.Count - MostNames}" : shown;
    }

    private static string Counted(int count, string word) => $"{count} {word}{(count == 1 ? "" : "s")}";
}
