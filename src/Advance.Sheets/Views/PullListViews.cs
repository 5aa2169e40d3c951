using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the pull list.</summary>
internal static class PullListViews
{
    private const int MostNames = 2;

    /// <summary>The pull list of the whole gig; null where nobody brings anything.</summary>
    public static PullListView? Of(Plan plan)
    {
        if (plan.Stock.Lines.Count + plan.Stock.FromOthers.Count == 0)
        {
            return null;
        }

        var cells = new Cells(plan);
        var lines = new PullLines(plan, cells);
        var others = plan.Stock.FromOthers
            .Where(piece => !(piece.From.Is(out var owner) && owner.Kind == OwnerKind.Hire))
            .GroupBy(piece => (From: FromWhom(piece, plan.Brief.Gig), piece.Item))
            .OrderBy(group => group.Key.From, StringComparer.Ordinal)
            .ThenBy(group => group.Key.Item, StringComparer.Ordinal)
            .Select(group => OtherOf(group.Key.From, [.. group], cells));
        return new PullListView(
            [.. plan.Load.Departments.Select(department => Department(department, lines, cells))],
            [.. Cases(plan, cells)],
            [.. others],
            [
                new PairView("Pieces", cells.Of(plan.Load.Pieces)),
                new PairView("Cases and loose pieces", cells.Of(plan.Load.Units)),
                new PairView("Weight without cases", cells.WithUnit(plan.Load.Weight)),
                new PairView("Weight with cases", cells.WithUnit(plan.Load.Gross)),
            ],
            Cells.Head(plan.Stock.Lines.Aggregate(Doubts.None, (sum, line) => sum.With(line.Total.RestsOn))));
    }

    private static PullListView.Department Department(DepartmentLoad load, PullLines lines, Cells cells) => new(
        load.Name.Length > 0 ? DaySheetViews.Capital(load.Name) : "In no stock",
        [.. lines.Of(load.Lines)],
        Untagged(cells.Of(load.Pieces)),
        Untagged(cells.Of(load.Cases)),
        Untagged(cells.WithUnit(load.Weight)),
        Untagged(cells.WithUnit(load.Gross)));

    // The question stands in the head of the list.
    private static Cell Untagged(Cell cell) => cell with { Tbc = null };

    private static IEnumerable<PullListView.CaseLine> Cases(Plan plan, Cells cells) =>
        plan.Stock.Lines.Where(line => line.Kind?.Role == Role.Case).Select(line => new PullListView.CaseLine(
            Cell.Of(line.Kind!.Shelf), Untagged(cells.Of(line.Total)) with { Strong = true }, Cell.Of(line.Kind.Name), PullLines.Missing(line)));

    // What an act brings is named by the act, though its list says no more than that it is the act's.
    private static string FromWhom(Piece piece, Gig gig) => !piece.From.Is(out var owner) ? "?"
        : owner is { Kind: OwnerKind.Act, Name: null } && gig.Acts.FirstOrDefault(act => piece.Address.Text.Split('/').Contains(act.Name, StringComparer.Ordinal)) is { } act ? act.Name
        : OwnerWords.Of(owner);

    private static PullListView.Other OtherOf(string from, IReadOnlyList<Piece> pieces, Cells cells) => new(
        cells.Of(pieces[0].From) with { Text = from },
        Cell.Number(pieces.Count) with { Strong = true },
        Cell.Of(pieces[0].Kind?.Name ?? pieces[0].Item),
        Cell.Of(NamesOf(pieces)));

    private static string NamesOf(IReadOnlyList<Piece> pieces)
    {
        var names = pieces.Where(piece => piece.Name != piece.Item).Select(piece => piece.Name).Distinct(StringComparer.Ordinal).ToList();
        var shown = string.Join(", ", names.Take(MostNames));
        return names.Count > MostNames ? $"{shown} + {names.Count - MostNames}" : shown;
    }
}
