using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Sets a table into strips: its caption, its head, a strip for each row, and its foot.</summary>
internal sealed class TableSetter(Table table, int width, Room room)
{
    public List<Strip> Set()
    {
        if (table.Columns.Count == 0)
        {
            return [];
        }

        var set = new SetTable(table, room);
        var strips = new List<Strip>();
        if (table.Caption.Count > 0)
        {
            strips.Add(Caption());
        }

        var grids = Grids(set);
        for (var i = 0; i < grids.Count; i++)
        {
            var part = new TableStrips(set, grids[i], room).Set();
            if (i > 0)
            {
                part[0].Gap = room.Scale.BlockGap;
            }

            strips.AddRange(part);
        }

        return strips;
    }

    private Strip Caption()
    {
        var lines = room.Composer.Compose(table.Caption, room.Composer.Body with { IsStrong = true }).Fit(width);
        var marks = new List<Mark>();
        lines.Draw(marks, 0, 0, width, Align.Left);
        return new Strip(lines.Height + (room.Scale.RowPad / 2), marks) { KeepsNext = true };
    }

    private List<Grid> Grids(SetTable set)
    {
        var gap = room.Scale.ColumnGap;
        var all = Enumerable.Range(0, table.Columns.Count).ToArray();
        var needed = set.Least.Sum(l => (long)l) + ((long)gap * (all.Length - 1));
        if (needed <= width)
        {
            return [GridOf(all)];
        }

        room.IsTooNarrow = true;
        var parts = room.MaySplit ? TableSplit.Parts(table.Columns, set.Least, gap, width) : null;
        if (parts is not null)
        {
            return parts.ConvertAll(GridOf);
        }

        if (room.MaySplit)
        {
            room.Faults.Add(FaultKind.TableTooWide, "The table is wider than the paper, even when it is split; words in it are broken.");
        }

        return [GridOf(all)];

        Grid GridOf(int[] columns)
        {
            var free = Math.Max(columns.Length * 2000, width - (gap * (columns.Length - 1)));
            var widths = ColumnWidths.Share(
                [.. columns.Select(c => table.Columns[c])], Pick(set.Least, columns), Pick(set.Most, columns), free);
            return new Grid(columns, widths, gap, table.Columns.Count, width);
        }
    }

    private static int[] Pick(int[] from, int[] columns) => Array.ConvertAll(columns, c => from[c]);
}
