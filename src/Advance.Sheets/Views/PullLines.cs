using Advance.Domain.Figures;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Turns lines of the stock plan into lines of the pull list.</summary>
internal sealed class PullLines
{
    private readonly Cells cells;
    private readonly ILookup<string, TravellingUnit> cases;
    private readonly Dictionary<Address, string> items;

    public PullLines(Plan plan, Cells cells)
    {
        this.cells = cells;
        cases = plan.Stock.Units.SelectMany(unit => unit.Contents.Select(packed => (packed.Item, Unit: unit)))
            .ToLookup(found => found.Item, found => found.Unit, StringComparer.Ordinal);
        items = plan.Pieces.DistinctBy(piece => piece.Address).ToDictionary(piece => piece.Address, piece => piece.Item);
    }

    /// <summary>By shelf; what only ever goes with one other kind of the same department stands under that.</summary>
    public IEnumerable<PullListView.Line> Of(IReadOnlyList<StockLine> lines)
    {
        var byItem = lines.ToDictionary(line => line.Item, StringComparer.Ordinal);
        var under = lines.Select(line => (Line: line, Above: AboveOf(line)))
            .Where(found => found.Above is { } above && byItem.TryGetValue(above, out var head) && AboveOf(head) is null)
            .ToLookup(found => found.Above!, found => found.Line, StringComparer.Ordinal);
        var companions = under.SelectMany(group => group).ToHashSet();
        return lines.Where(line => !companions.Contains(line))
            .SelectMany(line => under[line.Item].Select(companion => LineOf(companion, isCompanion: true)).Prepend(LineOf(line, isCompanion: false)));
    }

    /// <summary>How many are missing, and from whom to hire; blank where there are enough.</summary>
    public static Cell Missing(StockLine line)
    {
        if (line.Short.Value is not > 0)
        {
            return line.Short.Value is null ? new Cell("not known how many there are") { Verdict = Paper.Tree.Verdict.CannotBeJudged } : Cell.Blank;
        }

        var from = line.Kind?.HireFrom is { Length: > 0 } hire ? $": hire from {hire}" : "";
        return new Cell($"{line.Short.Value} short{from}") { Verdict = Paper.Tree.Verdict.Fails };
    }

    // The kind that every piece of a line goes with; null where one was asked for by itself.
    private string? AboveOf(StockLine line)
    {
        var others = line.Pieces.Select(piece => piece.Why is Need.GoesWith with ? items.GetValueOrDefault(with.Other) : null).Distinct(StringComparer.Ordinal).ToList();
        return others.Count == 1 ? others[0] : null;
    }

    private PullListView.Line LineOf(StockLine line, bool isCompanion) => new(
        Cell.Of(line.Kind?.Shelf ?? ""),
        Short(cells.Of(line.Need)),
        line.Spare.Value is 0 ? Cell.Blank : cells.Of(line.Spare) with { Tbc = null },
        cells.Of(line.Total) with { Strong = true, Tbc = null },
        Cell.Of(line.Kind?.Name ?? line.Item),
        Cell.Of(line.Item),
        Cell.Of(IntoOf(line)),
        Missing(line),
        Cell.Of(string.Join("; ", Remarks(line))) with { Tbc = cells.NoteOf(line.Need.RestsOn) },
        isCompanion);

    // Who must answer stands in the remark, where there is room for it.
    private static Cell Short(Cell cell) => cell.Tbc is null ? cell : cell with { Tbc = "" };

    // "Lead crate 1–3": the department is that of the list.
    private string IntoOf(StockLine line)
    {
        var kinds = cases[line.Item].GroupBy(unit => unit.Item, StringComparer.Ordinal)
            .Select(group => group.First().Name.StartsWith(group.Key + " ", StringComparison.Ordinal)
                ? $"{CaseWords.Short(group.First().Kind, group.Key)} {CaseWords.Numbers([.. group.Select(unit => unit.Name[(unit.Name.LastIndexOf(' ') + 1)..])])}"
                : string.Join(", ", group.Select(unit => unit.Name)))
            .ToList();
        return kinds.Count > 0 ? string.Join("; ", kinds) : "loose";
    }

    private static IEnumerable<string> Remarks(StockLine line)
    {
        if (line.Kind is { OutForRepair: > 0 and var broken })
        {
            yield return $"{broken} out for repair";
        }

        if (line.Hired.Value is > 0 and var hired)
        {
            yield return $"{hired} of them on hire";
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
}
