using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Splits a table that is too wide into parts, each of which has the key columns.</summary>
internal static class TableSplit
{
    /// <summary>The columns of each part; null when some column finds no room beside the keys.</summary>
    /// <param name="columns">The columns. Where none is a key, the first one is.</param>
    /// <param name="least">What each must have, in 1/1000 pt.</param>
    /// <param name="gap">Between two columns.</param>
    /// <param name="width">Width of the page's body.</param>
    public static List<int[]>? Parts(IReadOnlyList<TableColumn> columns, int[] least, int gap, int width)
    {
        var keys = Enumerable.Range(0, columns.Count).Where(i => columns[i].IsKey).ToList();
        if (keys.Count == 0)
        {
            keys.Add(0);
        }

        var all = Fill(keys, least, gap, width);
        if (all is null)
        {
            return null;
        }

        // The narrowest room that makes no more parts makes them even: no last part with a lone column.
        var (tooNarrow, enough) = (0, width);
        while (enough - tooNarrow > 1)
        {
            var between = tooNarrow + ((enough - tooNarrow) / 2);
            if (Fill(keys, least, gap, between) is { } parts && parts.Count == all.Count)
            {
                (all, enough) = (parts, between);
            }
            else
            {
                tooNarrow = between;
            }
        }

        return all;
    }

    private static List<int[]>? Fill(List<int> keys, int[] least, int gap, int width)
    {
        var keysWidth = keys.Sum(k => least[k] + gap);
        var parts = new List<int[]>();
        var part = new List<int>();
        var used = keysWidth;
        for (var i = 0; i < least.Length; i++)
        {
            if (keys.Contains(i))
            {
                continue;
            }

            if (keysWidth + least[i] > width)
            {
                return null;
            }

            if (used + least[i] > width)
            {
                parts.Add(WithKeys(keys, part));
                part.Clear();
                used = keysWidth;
            }

            part.Add(i);
            used += least[i] + gap;
        }

        parts.Add(WithKeys(keys, part));
        return parts;
    }

    private static int[] WithKeys(List<int> keys, List<int> part) => [.. keys.Concat(part).Order()];
}
