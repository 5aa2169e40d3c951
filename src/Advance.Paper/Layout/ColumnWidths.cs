using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>Shares a width among columns.</summary>
internal static class ColumnWidths
{
    /// <summary>How much wider than its contents a column without a hint is made at most, where there is room left.</summary>
    private const double MostStretch = 0.5;

    /// <summary>
    /// Widths in 1/1000 pt. Where all wishes can be met, what is left goes to the columns that grow. Where not, each gets what it must
    /// have, and the rest is let in like water: columns with small wishes are full first, so that figures and labels do not wrap.
    /// </summary>
    /// <param name="columns">The columns' hints; none for columns without.</param>
    /// <param name="least">What each must have.</param>
    /// <param name="most">What each would like.</param>
    /// <param name="width">What there is, without the gaps between columns.</param>
    public static int[] Share(IReadOnlyList<TableColumn> columns, int[] least, int[] most, int width)
    {
        if (least.Sum() >= width)
        {
            return Shrink(least, width);
        }

        var wished = most.Sum();
        return wished <= width ? Grow(columns, most, width - wished) : Fill(least, most, width);
    }

    private static int[] Shrink(int[] least, int width)
    {
        var sum = Math.Max(1L, least.Sum(l => (long)l));
        return Array.ConvertAll(least, l => (int)Math.Max(1000, (long)l * width / sum));
    }

    private static int[] Grow(IReadOnlyList<TableColumn> columns, int[] most, int free)
    {
        var widths = (int[])most.Clone();
        var shares = columns.Sum(Appetite);
        if (shares > 0)
        {
            for (var i = 0; i < widths.Length; i++)
            {
                widths[i] += (int)(free * Appetite(columns[i]) / shares);
            }

            return widths;
        }

        // Nobody asked to grow: all stretch a little, and the table stays narrower than the page before its columns look empty.
        var stretch = Math.Min(MostStretch, free / Math.Max(1.0, most.Sum(m => (long)m)));
        for (var i = 0; i < widths.Length; i++)
        {
            if (i >= columns.Count || columns[i].MostMm is null)
            {
                widths[i] += (int)(widths[i] * stretch);
            }
        }

        return widths;
    }

    private static double Appetite(TableColumn column) => double.IsFinite(column.Grow) ? Math.Max(0, column.Grow) : 0;

    private static int[] Fill(int[] least, int[] most, int width)
    {
        // The level is found by halving; the widths' sum grows with it and never passes the width.
        int low = 0, high = most.Max();
        while (low < high)
        {
            var level = low + ((high - low + 1) / 2);
            if (At(level).Sum(w => (long)w) <= width)
            {
                low = level;
            }
            else
            {
                high = level - 1;
            }
        }

        var widths = At(low);
        var left = width - widths.Sum();
        for (var i = 0; i < widths.Length && left > 0; i++)
        {
            var more = Math.Min(left, most[i] - widths[i]);
            widths[i] += more;
            left -= more;
        }

        return widths;

        int[] At(int level)
        {
            var at = new int[least.Length];
            for (var i = 0; i < at.Length; i++)
            {
                at[i] = Math.Min(most[i], Math.Max(least[i], level));
            }

            return at;
        }
    }
}
