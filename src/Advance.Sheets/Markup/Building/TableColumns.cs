using Advance.Paper.Tree;
using Advance.Sheets.Markup.Elements;
using Advance.Sheets.Markup.Scanning;

namespace Advance.Sheets.Markup.Building;

/// <summary>Builds the columns of a table from its <c>colgroup</c> and <c>thead</c>.</summary>
internal static class TableColumns
{
    public static IReadOnlyList<TableColumn> Make(Element table, MarkupFaults faults)
    {
        var columns = table.First("colgroup")?.Elements.ToList() ?? [];
        var rows = table.First("thead")?.Elements.ToList() ?? [];
        if (columns.Count == 0 || rows.Count != 1)
        {
            faults.Add(table.At, "A `table` needs a `colgroup` with a `col` for each column, and a `thead` with one `tr`.");
        }

        foreach (var twice in columns.GroupBy(column => column.Text("data-key")).Where(same => same.Key is not null && same.Count() > 1))
        {
            faults.Add(twice.Last().At, $"Two columns have the key `{twice.Key}`.");
        }

        return [.. columns.Zip(Heads(rows.FirstOrDefault(), columns.Count, faults), Make)];
    }

    private static List<IReadOnlyList<Inline>> Heads(Element? row, int columns, MarkupFaults faults)
    {
        var fields = row?.Elements.ToList() ?? [];
        foreach (var field in fields.Where(field => field.Form.Name != "th"))
        {
            faults.Add(field.At, "In a `thead` stands `th`.");
        }

        if (row is not null && fields.Count != columns)
        {
            faults.Add(row.At, $"There are {columns} columns and {fields.Count} heads.");
        }

        var heads = fields.Select(field => Line.Of(field, faults)).Take(columns).ToList();
        return [.. heads, .. Enumerable.Repeat<IReadOnlyList<Inline>>([], columns - heads.Count)];
    }

    private static TableColumn Make(Element element, IReadOnlyList<Inline> head)
    {
        var column = new TableColumn(element.Text("data-key") ?? "", head)
        {
            Unit = element.Text("data-unit") ?? "",
            Align = (Align)(element.Word("data-align") ?? 0),
            Strong = element.Words.Contains("strong"),
            IsKey = element.Words.Contains("key"),
            LeastMm = element.Number("data-least"),
            MostMm = element.Number("data-most"),
            Grow = element.Number("data-grow") ?? 0,
        };
        return element.Number("data-fixed") is { } mm ? column.Fixed(mm) : column;
    }
}
