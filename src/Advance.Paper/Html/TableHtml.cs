using Advance.Paper.Layout;
using Advance.Paper.Tree;

namespace Advance.Paper.Html;

/// <summary>Writes tables.</summary>
internal sealed class TableHtml(Markup page, InlineHtml inlines)
{
    // Labels and figures up to this many letters do not wrap.
    private const int Short = 14;

    private bool[] isShort = [];

    public static string? Class(Verdict verdict) => verdict switch
    {
        Verdict.CannotBeJudged => "unknown",
        Verdict.Fails => "fails",
        _ => null,
    };

    public void Write(Table table)
    {
        if (table.Columns.Count == 0)
        {
            return;
        }

        isShort = ShortColumns(table);
        page.Open("div", ("class", "wide")).Open("table", ("id", table.Id is { } id ? Markup.Id(id) : null));
        if (table.Caption.Count > 0)
        {
            page.Open("caption");
            inlines.Write(table.Caption);
            page.Close("caption");
        }

        WriteHead(table);
        foreach (var group in table.Groups)
        {
            WriteGroup(table, group);
        }

        if (table.Groups.All(g => g.Rows.Count == 0) && table.WhenEmpty.Count > 0)
        {
            FullWidth(table, table.WhenEmpty, "empty", null);
        }

        if (table.Foot.Count > 0)
        {
            page.Open("tfoot");
            foreach (var row in table.Foot)
            {
                WriteRow(table, row);
            }

            page.Close("tfoot");
        }

        page.Close("table").Close("div");
    }

    private void WriteHead(Table table)
    {
        page.Open("thead", ("class", table.ShowsHead ? null : "unseen")).Open("tr");
        foreach (var column in table.Columns)
        {
            // A head without words is no head to whoever hears the page.
            var name = column.Head.Count > 0 || column.Unit.Length > 0 ? "th" : "td";
            page.Open(name, ("scope", name == "th" ? "col" : null), ("class", Class(column)), ("data-key", column.Key), ("data-unit", column.Unit.Length > 0 ? column.Unit : null));
            inlines.Write(column.Head);
            if (column.Unit.Length > 0)
            {
                page.Text(" ").Element("span", column.Unit, ("class", "unit"));
            }

            page.Close(name);
        }

        page.Close("tr").Close("thead");
    }

    private void WriteGroup(Table table, RowGroup group)
    {
        page.Open("tbody", ("id", group.Id is { } id ? Markup.Id(id) : null));
        if (group.Head.Count > 0)
        {
            FullWidth(table, group.Head, "group", "rowgroup");
        }

        foreach (var row in group.Rows)
        {
            WriteRow(table, row);
        }

        page.Close("tbody");
    }

    private void FullWidth(Table table, IReadOnlyList<Inline> text, string kind, string? scope)
    {
        var name = scope is null ? "td" : "th";
        page.Open("tr", ("class", kind)).Open(name, ("colspan", $"{table.Columns.Count}"), ("scope", scope));
        inlines.Write(text);
        page.Close(name).Close("tr");
    }

    private void WriteRow(Table table, Row row)
    {
        var kind = row.Kind switch { RowKind.Sub => "sub", RowKind.Hold => "hold", RowKind.Total => "total", _ => null };
        page.Open("tr", ("class", row.JoinsNext ? $"{kind} joined".Trim() : kind), ("id", row.Id is { } id ? Markup.Id(id) : null));
        var name = row.Cells.Count > 0 ? FirstWords.Plain(row.Cells.FirstOrDefault(c => FirstWords.Plain(c.Text).Length > 0)?.Text ?? []) : "";
        var at = 0;
        foreach (var cell in row.Cells)
        {
            if (at >= table.Columns.Count)
            {
                break;
            }

            var span = row.Kind == RowKind.Hold ? table.Columns.Count : Math.Clamp(cell.Span, 1, table.Columns.Count - at);
            inlines.Around = $"{FirstWords.Plain(table.Columns[at].Head)} {name}".Trim();
            page.Open("td", ("class", Class(table.Columns[at], isShort[at] && span == 1, cell)), ("colspan", span > 1 ? $"{span}" : null));
            inlines.Write(cell.Text);
            page.Close("td");
            at += span;
        }

        while (at++ < table.Columns.Count)
        {
            page.Open("td").Close("td");
        }

        page.Close("tr");
        inlines.Around = "";
    }

    private static string? Class(TableColumn column, bool isWhole = false, Cell? cell = null)
    {
        var classes = new List<string>();
        if ((cell?.Align ?? column.Align) is var align && align != Align.Left)
        {
            classes.Add(align == Align.Right ? "right" : "centre");
        }

        if (column.Strong)
        {
            classes.Add("strong");
        }

        if (isWhole)
        {
            classes.Add("whole");
        }

        if (cell is not null && Class(cell.Verdict) is { } verdict)
        {
            classes.Add(verdict);
        }

        return classes.Count == 0 ? null : string.Join(' ', classes);
    }

    private static bool[] ShortColumns(Table table)
    {
        var columns = new bool[table.Columns.Count];
        Array.Fill(columns, true);
        foreach (var row in table.Groups.SelectMany(g => g.Rows))
        {
            var at = 0;
            foreach (var cell in row.Cells)
            {
                if (at < columns.Length && cell.Span == 1 && row.Kind != RowKind.Hold)
                {
                    columns[at] &= FirstWords.Plain(cell.Text).Length <= Short;
                }

                at += Math.Clamp(cell.Span, 1, columns.Length);
            }
        }

        return columns;
    }
}
