using Advance.Paper.Tree;
using Advance.Sheets.Markup.Elements;
using Advance.Sheets.Markup.Scanning;

namespace Advance.Sheets.Markup.Building;

/// <summary>Builds tables.</summary>
internal sealed class Tables(MarkupFaults faults)
{
    /// <summary>A table by itself, or null after a fault that leaves it without columns.</summary>
    public Table? Make(Element element)
    {
        foreach (var row in RowsOf(element).Where(row => row.Text("data-top") is not null || row.Text("data-bottom") is not null))
        {
            faults.Add(row.At, "Only the rows of a table alongside a picture stand level with something.");
        }

        return Build(element);
    }

    /// <summary>A table alongside a picture, with the part of the picture that each row stands level with.</summary>
    public (Table? Table, IReadOnlyList<Band> Bands) MakeLevel(Element element)
    {
        var bands = new List<Band>();
        foreach (var row in RowsOf(element).Where(row => !row.Words.Contains("group") && !row.Words.Contains("when-empty")))
        {
            if (row.Number("data-top") is { } top && row.Number("data-bottom") is { } bottom && bottom >= top)
            {
                bands.Add(new Band(top, bottom));
            }
            else
            {
                faults.Add(row.At, "A row alongside a picture needs `data-top` and below it `data-bottom`.");
            }
        }

        return (Build(element), bands);
    }

    private static IEnumerable<Element> RowsOf(Element table) =>
        table.Elements.Where(part => part.Form.Name == "tbody").SelectMany(part => part.Elements);

    private Table? Build(Element element)
    {
        foreach (var part in element.Elements.GroupBy(part => part.Form.Name).Where(parts => parts.Key != "tbody" && parts.Count() > 1))
        {
            faults.Add(part.Last().At, $"A `table` has one `{part.Key}`.");
        }

        var columns = TableColumns.Make(element, faults);
        if (columns.Count == 0)
        {
            return null;
        }

        var rows = new TableRows(columns.Count, faults);
        var groups = rows.Groups(element.Elements.Where(part => part.Form.Name == "tbody"));
        return new(columns, groups)
        {
            Caption = element.First("caption") is { } caption ? Line.Of(caption, faults) : [],
            Foot = element.First("tfoot") is { } foot ? rows.Foot(foot) : [],
            WhenEmpty = rows.WhenEmpty,
            ShowsHead = element.First("thead")?.Words.Contains("off-paper") != true,
        };
    }
}
