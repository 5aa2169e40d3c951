using Advance.Paper.Tree;

namespace Advance.Paper.Workbook;

/// <summary>Finds the tables of a sheet, wherever they stand.</summary>
internal static class Tables
{
    private const int Deepest = 12;

    public static IEnumerable<Table> In(IReadOnlyList<Block> blocks, int depth = 0)
    {
        if (depth >= Deepest)
        {
            yield break;
        }

        foreach (var block in blocks)
        {
            var inner = block switch
            {
                Table table => [table],
                Alongside alongside => [alongside.Table],
                KeepTogether kept => In(kept.Blocks, depth + 1),
                Columns columns => columns.Parts.SelectMany(p => In(p.Blocks, depth + 1)),
                _ => [],
            };
            foreach (var table in inner)
            {
                if (table.Columns.Count > 0)
                {
                    yield return table;
                }
            }
        }
    }
}
