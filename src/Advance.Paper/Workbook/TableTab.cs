using Advance.Paper.Layout;
using Advance.Paper.Tree;
using ClosedXML.Excel;

namespace Advance.Paper.Workbook;

/// <summary>Writes one table on a tab: a row of heads, the rows, and where it has groups a first column that says which.</summary>
internal sealed class TableTab(IXLWorksheet tab, Table table, Faults faults)
{
    private const int FirstBodyRow = 2;
    private const int LeastWidth = 6;
    private const int MostWidth = 60;

    private readonly bool hasGroups = table.Groups.Any(g => g.Head.Count > 0);
    private readonly double[] widths = new double[table.Columns.Count + 1];
    private int at = 1;

    private int First => hasGroups ? 2 : 1;

    private int Last => First + table.Columns.Count - 1;

    /// <summary>Writes the table; answers whether it has formulas.</summary>
    public bool Write()
    {
        WriteHead();
        var hasFormulas = false;
        foreach (var group in table.Groups)
            foreach (var row in group.Rows)
                hasFormulas |= WriteRow(row, FirstWords.Plain(group.Head));
        var lastRow = at - 1;
        if (lastRow > 1)
            tab.Range(1, 1, lastRow, Last).SetAutoFilter();
        foreach (var row in table.Foot)
            hasFormulas |= WriteRow(row, "");
        tab.SheetView.FreezeRows(1);
        var keys = table.Columns.TakeWhile(c => c.IsKey).Count();
        if (keys > 0)
            tab.SheetView.FreezeColumns(First - 1 + keys);
        SetWidths();
        return hasFormulas;
    }

    private void WriteHead()
    {
        if (hasGroups)
            Put(1, table.Caption.Count > 0 ? FirstWords.Plain(table.Caption) : "Group");
        for (var i = 0; i < table.Columns.Count; i++)
        {
            var column = table.Columns[i];
            var head = FirstWords.Plain(column.Head);
            Put(First + i, column.Unit.Length == 0 ? head : $"{head} ({column.Unit})".TrimStart());
            var style = tab.Column(First + i).Style;
            style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
            style.Alignment.WrapText = true;
            if (column.Align != Align.Left)
                style.Alignment.Horizontal = column.Align == Align.Right ? XLAlignmentHorizontalValues.Right : XLAlignmentHorizontalValues.Center;
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

    private bool WriteRow(Row row, string group)
    {
        var hasFormulas = false;
        if (hasGroups)
        {
            Cells.SetText(tab.Cell(at, 1), group);
            Widen(1, group);
        }

        var column = 0;
        foreach (var cell in row.Cells)
        {
            if (column >= table.Columns.Count)
                break;
            hasFormulas |= WriteCell(tab.Cell(at, First + column), cell, column, row.Kind);
            if (row.Kind == RowKind.Hold)
                break;
            column += Math.Clamp(cell.Span, 1, table.Columns.Count - column);
        }

        if (row.Kind is RowKind.Total or RowKind.Hold)
            tab.Range(at, 1, at, Last).Style.Font.Bold = true;
        at++;
        return hasFormulas;
    }

    private bool WriteCell(IXLCell target, Cell cell, int column, RowKind kind)
    {
        var value = cell.Value ?? OnlyDatum(cell);
        if (value is not null && ValueCells.Set(target, value, table.Columns[column].Unit, FirstBodyRow, faults))
        {
            Widen(First + column, FirstWords.Plain(cell.Text));
            return value is SumValue;
        }

        var text = PlainText.Of(cell.Text);
        Cells.SetText(target, text);
        if (cell.Span == 1 && kind != RowKind.Hold)
            Widen(First + column, text);
        if (kind == RowKind.Sub && text.Length > 0 && table.Columns[column].Align == Align.Left)
            target.Style.Alignment.Indent = 1;
        return false;
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
            widths[column - 1] = Math.Max(widths[column - 1], line.Length);
    }

    /// <summary>By the longest line, without asking the system for a font.</summary>
    private void SetWidths()
    {
        for (var column = 1; column <= Last; column++)
            tab.Column(column).Width = Math.Clamp(widths[column - 1] + 2, LeastWidth, MostWidth);
    }
}
