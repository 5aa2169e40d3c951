using Advance.Paper.Tree;
using Advance.Sheets.Markup.Elements;
using Advance.Sheets.Markup.Scanning;
using Advance.Sheets.Markup.Subset;

namespace Advance.Sheets.Markup.Building;

/// <summary>Builds the rows of a table.</summary>
/// <param name="columns">How many columns there are.</param>
/// <param name="faults">Takes what is wrong.</param>
internal sealed class TableRows(int columns, MarkupFaults faults)
{
    private static readonly string[] Kinds = ["sub", "hold", "total"];

    /// <summary>What is printed in place of rows, as a row among them said.</summary>
    public IReadOnlyList<Inline> WhenEmpty { get; private set; } = [];

    /// <summary>The groups of all bodies; each body, and each row that heads a group, opens one.</summary>
    public IReadOnlyList<RowGroup> Groups(IEnumerable<Element> bodies)
    {
        var groups = new List<RowGroup>();
        foreach (var body in bodies)
        {
            var rows = Open(groups, head: null);
            foreach (var row in body.Elements)
            {
                if (row.Words.Contains("when-empty"))
                {
                    WhenEmpty = OnlyField(row);
                }
                else if (row.Words.Contains("group"))
                {
                    rows = Open(groups, row);
                }
                else
                {
                    rows.Add(Make(row));
                }
            }
        }

        groups.RemoveAll(group => group.Head.Count == 0 && group.Rows.Count == 0);
        return groups;
    }

    /// <summary>The rows at the foot.</summary>
    public IReadOnlyList<Row> Foot(Element foot)
    {
        foreach (var row in foot.Elements.Where(row => row.Words.Contains("group") || row.Words.Contains("when-empty")))
        {
            faults.Add(row.At, "A row at the foot opens no group and is always printed.");
        }

        return [.. foot.Elements.Select(Make)];
    }

    private List<Row> Open(List<RowGroup> groups, Element? head)
    {
        var rows = new List<Row>();
        groups.Add(new RowGroup(rows) { Head = head is null ? [] : OnlyField(head), Id = head?.Id });
        return rows;
    }

    private static RowKind KindOf(string? word) => word switch
    {
        "sub" => RowKind.Sub,
        "hold" => RowKind.Hold,
        "total" => RowKind.Total,
        _ => RowKind.Normal,
    };

    private IReadOnlyList<Inline> OnlyField(Element row)
    {
        var fields = row.Elements.ToList();
        if (fields.Count != 1 || row.Words.Count > 1)
        {
            faults.Add(row.At, $"A row `{row.Words.Order(StringComparer.Ordinal).First()}` is nothing else, and has one field.");
        }

        return fields.Count > 0 ? Line.Of(fields[0], faults) : [];
    }

    private Row Make(Element row)
    {
        var kinds = Kinds.Where(row.Words.Contains).ToList();
        if (kinds.Count > 1)
        {
            faults.Add(row.At, $"A row is `{kinds[0]}` or `{kinds[1]}`, not both.");
        }

        var cells = row.Elements.Select(MakeCell).ToList();
        var taken = 0;
        cells.ForEach(cell => taken += cell.Span);
        if (taken > columns)
        {
            faults.Add(row.At, $"There are {columns} columns, and this row takes {taken}.");
        }

        return new(cells)
        {
            Kind = KindOf(kinds.FirstOrDefault()),
            Id = row.Id,
            JoinsNext = row.Words.Contains("joins"),
        };
    }

    private Cell MakeCell(Element field)
    {
        if (field.Form.Name != "td")
        {
            faults.Add(field.At, "A `th` stands in the `thead`; here stands `td`.");
        }

        var line = Line.OfField(field, faults);
        var value = field.Text("data-value") is { } written ? MachineValues.Of(written) : null;
        return new(line.Pieces)
        {
            Span = (int)(field.Number("colspan") ?? 1),
            Verdict = line.Verdict,
            Value = value is NumberValue number ? number with { Unit = field.Text("data-unit") ?? "" } : value,
        };
    }
}
