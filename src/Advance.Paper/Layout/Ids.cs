using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Gathers the ids of a document.</summary>
internal sealed class Ids
{
    private const int Deepest = 12;

    private readonly HashSet<string> ids = new(StringComparer.Ordinal);
    private readonly Faults faults;

    private Ids(Faults faults) => this.faults = faults;

    /// <summary>All ids; those that stand twice are faults.</summary>
    public static HashSet<string> Of(Document document, Faults faults)
    {
        var found = new Ids(faults);
        foreach (var sheet in document.Sheets)
        {
            faults.Sheet = sheet.Id;
            found.Take(sheet.Id);
            found.Take(sheet.Blocks, 0);
        }

        faults.Sheet = "";
        return found.ids;
    }

    private void Take(IReadOnlyList<Block> blocks, int depth)
    {
        if (depth > Deepest)
        {
            return;
        }

        foreach (var block in blocks)
        {
            Take(block.Id);
            switch (block)
            {
                case Columns columns:
                    foreach (var part in columns.Parts)
                    {
                        Take(part.Blocks, depth + 1);
                    }

                    break;
                case KeepTogether kept:
                    Take(kept.Blocks, depth + 1);
                    break;
                case Table table:
                    Take(table);
                    break;
                case Alongside alongside:
                    Take(alongside.Table.Id);
                    Take(alongside.Table);
                    break;
            }
        }
    }

    private void Take(Table table)
    {
        foreach (var group in table.Groups)
        {
            Take(group.Id);
            foreach (var row in group.Rows)
            {
                Take(row.Id);
            }
        }

        foreach (var row in table.Foot)
        {
            Take(row.Id);
        }
    }

    private void Take(string? id)
    {
        if (id is not null && !ids.Add(id))
        {
            faults.Add(FaultKind.DoubleId, $"Two things have the id \"{id}\"; links lead to the first.");
        }
    }
}
