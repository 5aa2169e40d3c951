using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>The kinds of hoists that are used, each once: what is the same for every one of them.</summary>
internal sealed class HoistKindRows(RiggingPlan hung, Cells cells, RiggingCells rigging)
{
    private static readonly Cell MayNot = Cell.Of("may not");

    /// <summary>In the order in which they hang.</summary>
    public IEnumerable<HoistTableView.HoistKind> Rows =>
        from pick in hung.Picks
        let piece = pick.Placed.Hoist
        where piece?.Kind?.Hoist is not null
        group piece by piece.Item into alike
        select Of(alike.First().Kind!, alike.Count());

    private HoistTableView.HoistKind Of(Kind kind, int count)
    {
        var hoist = kind.Hoist!;
        return new HoistTableView.HoistKind(
            Cell.Of(kind.Name) with { Strong = true },
            Cell.Number(count),
            cells.Of(hoist.Lifts),
            hoist.Holds is { } holds ? cells.Of(holds) : MayNot,
            hoist.Moves is { } moves ? cells.Of(moves) : MayNot,
            ChainOf(hoist),
            SpeedOf(hoist),
            Asked(hoist.Limiter),
            Asked(hoist.Brakes),
            Cell.Of(string.Join(", ", kind.With.Select(companion => companion.Item))));
    }

    private Cell ChainOf(Hoist hoist)
    {
        var cell = Asked(hoist.ChainLength);
        return hoist.Falls > 1 && hoist.ChainLength is { IsKnown: true } ? cell with { Text = $"{cell.Text}, {hoist.Falls} falls" } : cell;
    }

    private Cell SpeedOf(Hoist hoist)
    {
        var cell = Asked(hoist.Speed);
        return hoist.Speed is { } said && said.Is(out var speed) ? cell with { Text = rigging.PerMinute(speed) } : cell;
    }

    private Cell Asked<T>(Given<T>? given)
        where T : notnull => given is { } said ? cells.Of(said) : new Cell("?") { Verdict = Paper.Tree.Verdict.CannotBeJudged };
}
