using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>A table with all its text composed, and what each column needs. Indented by nothing, wrapped nowhere yet.</summary>
internal sealed class SetTable
{
    private readonly Room room;

    public SetTable(Table table, Room room)
    {
        this.room = room;
        Table = table;
        Heads = [.. table.Columns.Select(ComposeHead)];
        Groups = [.. table.Groups.Select(g => g.Rows.Select(Compose).ToArray())];
        Foot = [.. table.Foot.Select(Compose)];
        Least = new int[Heads.Length];
        Most = new int[Heads.Length];
        Measure();
    }

    public Table Table { get; }

    public SetText[] Heads { get; }

    public SetRow[][] Groups { get; }

    public SetRow[] Foot { get; }

    /// <summary>For each column the width under which words are cut, in 1/1000 pt.</summary>
    public int[] Least { get; }

    /// <summary>For each column the width at which nothing in it wraps, in 1/1000 pt; not less than the least.</summary>
    public int[] Most { get; }

    private IEnumerable<SetRow> Rows => Groups.SelectMany(g => g).Concat(Foot);

    private SetText ComposeHead(TableColumn column)
    {
        if (!Table.ShowsHead)
        {
            return SetText.Empty;
        }

        var style = room.Composer.Quiet with { Shade = Shade.Ink, IsStrong = column.Strong };
        if (column.Unit.Length == 0)
        {
            return room.Composer.Compose(column.Head, style);
        }

        return room.Composer.Compose([.. column.Head, new Text(" "), new Text(column.Unit)], style);
    }

    private SetRow Compose(Row row)
    {
        var columns = Table.Columns;
        var cells = new List<SetCell>(row.Cells.Count);
        var at = 0;
        foreach (var cell in row.Cells)
        {
            if (at >= columns.Count)
            {
                room.Faults.Add(FaultKind.TooManyCells, $"A row has more cells than the table's {columns.Count} columns; the last ones are left out.");
                break;
            }

            var span = row.Kind == RowKind.Hold ? columns.Count : Math.Clamp(cell.Span, 1, columns.Count - at);
            var style = room.Composer.Body with { IsStrong = row.Kind is RowKind.Total or RowKind.Hold || columns[at].Strong };
            cells.Add(new SetCell(at, span, room.Composer.Compose(cell.Text, style), cell.Align ?? (row.Kind == RowKind.Hold ? Align.Left : columns[at].Align), cell.Verdict));
            at += span;
        }

        return new SetRow(row, cells);
    }

    private void Measure()
    {
        for (var i = 0; i < Heads.Length; i++)
        {
            (Least[i], Most[i]) = (Heads[i].Least, Heads[i].Least);
        }

        foreach (var row in Rows)
        {
            foreach (var cell in row.Cells)
            {
                if (cell.Span == 1)
                {
                    Widen(cell.Column, cell.Text.Least + row.Indent(cell, room.Scale), cell.Text.Most + row.Indent(cell, room.Scale));
                }
            }
        }

        foreach (var row in Rows)
        {
            foreach (var cell in row.Cells)
            {
                if (cell.Span > 1 && row.Row.Kind != RowKind.Hold)
                {
                    WidenLast(cell);
                }
            }
        }

        for (var i = 0; i < Heads.Length; i++)
        {
            Hint(Table.Columns[i], i);
        }
    }

    private void Widen(int column, int least, int most)
    {
        Least[column] = Math.Max(Least[column], least);
        Most[column] = Math.Max(Most[column], Math.Max(least, most));
    }

    /// <summary>What a cell over many columns lacks is given to its last column.</summary>
    private void WidenLast(SetCell cell)
    {
        var gaps = room.Scale.ColumnGap * (cell.Span - 1);
        var lacks = cell.Text.Least - gaps;
        for (var i = cell.Column; i < cell.Column + cell.Span; i++)
        {
            lacks -= Least[i];
        }

        var last = cell.Column + cell.Span - 1;
        if (lacks > 0)
        {
            Widen(last, Least[last] + lacks, Most[last]);
        }
    }

    private void Hint(TableColumn column, int i)
    {
        if (column.LeastMm is { } least && double.IsFinite(least))
        {
            Widen(i, Mil.FromMm(Math.Clamp(least, 0, 1000)), 0);
        }

        if (column.MostMm is { } most && double.IsFinite(most))
        {
            Most[i] = Math.Max(Least[i], Math.Min(Most[i], Mil.FromMm(Math.Clamp(most, 0, 1000))));
        }
    }
}
