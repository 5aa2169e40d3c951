using Advance.Paper.Layout;
using Advance.Paper.Tree;
using ClosedXML.Excel;

namespace Advance.Paper.Workbook;

/// <summary>Writes one table on a tab: a row of heads, the rows, and where it has groups a first column that says which.</summary>
internal sealed class TableTab(IXLWorksheet tab, Table table, Wording words, Faults faults, List<WrittenSum> sums)
{
    private const double LineHeight = 13.5;
    private const int FirstBodyRow = 2;
    private const int LeastWidth = 6;
    private const int MostWidth = 60;

    private readonly bool hasGroups = table.Groups.Any(g => g.Head.Count > 0);
    private readonly int[] widths = new int[table.Columns.Count + 1];
    private readonly List<(int Row, int Column, string Text)> tall = [];
    private int at = 1;

    private int First => hasGroups ? 2 : 1;

    private int Last => First + table.Columns.Count - 1;

    public void Write()
    {
        WriteHead();
        foreach (var group in table.Groups)
        {
            foreach (var row in group.Rows)
            {
                WriteRow(row, FirstWords.Plain(group.Head), isFoot: false);
            }
        }

        var lastRow = at - 1;
        if (lastRow > 1)
        {
            tab.Range(1, 1, lastRow, Last).SetAutoFilter();
        }

        foreach (var row in table.Foot)
        {
            WriteRow(row, "", isFoot: true);
        }

        tab.SheetView.FreezeRows(1);
        var keys = table.Columns.TakeWhile(c => c.IsKey).Count();
        if (keys > 0)
        {
            tab.SheetView.FreezeColumns(First - 1 + keys);
        }

        SetWidths();
        SetHeights();
    }

    private void WriteHead()
    {
        if (hasGroups)
        {
            Put(1, words.Group);
            Align(tab.Column(1).Style, Tree.Align.Left);
        }

        for (var i = 0; i < table.Columns.Count; i++)
        {
            var column = table.Columns[i];
            var head = FirstWords.Plain(column.Head);
            Put(First + i, column.Unit.Length == 0 ? head : $"{head} ({column.Unit})".TrimStart());
            Align(tab.Column(First + i).Style, column.Align);
        }

        var heads = tab.Range(1, 1, 1, Last).Style;
        heads.Font.Bold = true;
        heads.Border.BottomBorder = XLBorderStyleValues.Thin;
        heads.Alignment.WrapText = true;
        at = 2;

        void Put(int column, string text)
        {
            Cells.SetText(tab.Cell(1, column), text);
            Widen(column, text);
        }
    }

    private static void Align(IXLStyle style, Align align)
    {
        style.Alignment.Vertical = XLAlignmentVerticalValues.Center;
        style.Alignment.WrapText = true;
        style.Alignment.Horizontal = align switch
        {
            Tree.Align.Right => XLAlignmentHorizontalValues.Right,
            Tree.Align.Centre => XLAlignmentHorizontalValues.Center,
            _ => XLAlignmentHorizontalValues.Left,
        };
    }

    private void WriteRow(Row row, string group, bool isFoot)
    {
        if (hasGroups)
        {
            Cells.SetText(tab.Cell(at, 1), group);
            Widen(1, group);
        }

        var column = 0;
        foreach (var cell in row.Cells)
        {
            if (column >= table.Columns.Count)
            {
                break;
            }

            var target = tab.Cell(at, First + column);
            var span = row.Kind == RowKind.Hold ? table.Columns.Count : Math.Clamp(cell.Span, 1, table.Columns.Count - column);
            WriteCell(target, cell, column, span, row.Kind);
            if (cell.Align is { } align)
            {
                Align(target.Style, align);
            }

            if (span > 1)
            {
                Spread(target, span, isFoot);
            }

            column += span;
        }

        if (row.Kind is RowKind.Total or RowKind.Hold)
        {
            tab.Range(at, 1, at, Last).Style.Font.Bold = true;
        }

        at++;
    }

    /// <summary>Rows that are sorted and filtered have no merged cells; there a long text runs on over its empty neighbours.</summary>
    private void Spread(IXLCell target, int span, bool isFoot)
    {
        if (isFoot)
        {
            tab.Range(at, target.Address.ColumnNumber, at, target.Address.ColumnNumber + span - 1).Merge();
        }
        else
        {
            target.Style.Alignment.WrapText = false;
        }
    }

    private void WriteCell(IXLCell target, Cell cell, int column, int span, RowKind kind)
    {
        var value = cell.Value ?? OnlyDatum(cell);
        if (value is not null && ValueCells.Set(target, value, table.Columns[column].Unit, FirstBodyRow, faults))
        {
            Widen(First + column, FirstWords.Plain(cell.Text));
            if (value is SumValue sum)
            {
                sums.Add(new WrittenSum(tab.Position, target.Address.ToString()!, sum.Amount));
            }

            return;
        }

        var text = PlainText.Of(cell.Text);
        Cells.SetText(target, text);
        if (span == 1)
        {
            Widen(First + column, text);
        }

        if (span == 1 && (text.Length > MostWidth || text.Contains('\n', StringComparison.Ordinal)))
        {
            tall.Add((at, First + column, text));
        }

        if (kind == RowKind.Sub && text.Length > 0 && table.Columns[column].Align == Tree.Align.Left)
        {
            target.Style.Alignment.Indent = 1;
        }
    }

    private static MachineValue? OnlyDatum(Cell cell)
    {
        MachineValue? only = null;
        foreach (var inline in cell.Text)
        {
            switch (inline)
            {
                case Datum when only is not null:
                    return null;
                case Datum datum:
                    only = datum.Value;
                    break;
                case Bar or LineBreak or WriteIn:
                case Text text when string.IsNullOrWhiteSpace(text.Value):
                    break;
                default:
                    // A figure among words is a sentence.
                    return null;
            }
        }

        return only;
    }

    private void Widen(int column, string text)
    {
        foreach (var line in text.Split('\n'))
        {
            widths[column - 1] = Math.Max(widths[column - 1], line.Length);
        }
    }

    /// <summary>By the longest line, without asking the system for a font.</summary>
    private void SetWidths()
    {
        for (var column = 1; column <= Last; column++)
        {
            tab.Column(column).Width = Width(column);
        }
    }

    private int Width(int column) => Math.Clamp(widths[column - 1] + 2, LeastWidth, MostWidth);

    /// <summary>Not each program makes rows as high as their lines by itself.</summary>
    private void SetHeights()
    {
        foreach (var row in tall.GroupBy(t => t.Row))
        {
            var lines = row.Max(t => t.Text.Split('\n').Sum(line => Math.Max(1, (line.Length + Width(t.Column) - 1) / Width(t.Column))));
            tab.Row(row.Key).Height = Math.Min(lines, 30) * LineHeight;
        }
    }
}
