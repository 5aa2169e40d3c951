namespace Advance.Paper.Layout;

/// <summary>
/// Finds where pages end, by dynamic programming: best[j] is the least cost of setting the strips before j. Cost is compared in this order:
/// rules broken that should hold (as a heading alone at the foot, or warnings alone on a page), pages, and then the sum of small displeasures.
/// </summary>
internal static class Paging
{
    private const long BrokenRule = 1_000_000_000_000;
    private const long Page = 1_000_000_000;
    private const long LoneStrip = 400;
    private const long PartedGroup = 60;
    private const long PartedRow = 700;
    private const long Elsewhere = 10;
    private const long EmptyPage = 800;
    private const long NearlyEmptyLast = 900;

    // Less of a last page than this is a few lines that somebody loses.
    private const double LeastOfLast = 0.2;

    /// <summary>The pages of a run of strips; none for no strips.</summary>
    /// <param name="strips">None taller than a page, see <see cref="StripCutter"/>.</param>
    /// <param name="height">Height of a page in 1/1000 pt.</param>
    public static List<PageRange> Pages(IReadOnlyList<Strip> strips, int height)
    {
        var best = new long[strips.Count + 1];
        var from = new int[strips.Count + 1];
        Array.Fill(best, long.MaxValue, 1, strips.Count);
        for (var start = 0; start < strips.Count; start++)
        {
            var used = strips[start].HeadHeight();
            var before = best[start] + Page;
            var (isAside, hasWarning) = (start > 0, false);
            for (var end = start; end < strips.Count; end++)
            {
                var strip = strips[end];
                if (end > start && strip.BeginsPage)
                {
                    break;
                }

                used += strip.Height + (end > start ? strip.Gap : 0);
                if (used > height && end > start)
                {
                    break;
                }

                isAside &= strip.IsAside;
                hasWarning |= strip.IsWarning;
                var cost = before + CostAfter(strips, start, end, height - used, height) + (isAside && hasWarning ? BrokenRule : 0);
                if (cost < best[end + 1])
                {
                    (best[end + 1], from[end + 1]) = (cost, start);
                }
            }
        }

        var pages = new List<PageRange>();
        for (var end = strips.Count; end > 0; end = from[end])
        {
            pages.Add(new PageRange(strips, from[end], end - from[end]));
        }

        pages.Reverse();
        return pages;
    }

    /// <summary>How full the last page is, from 0 to 1, where each page before it takes all that finds room there.</summary>
    public static double LastFilled(IReadOnlyList<Strip> strips, int height)
    {
        var used = 0;
        for (var i = 0; i < strips.Count; i++)
        {
            used += strips[i].Gap + strips[i].Height;
            if (i == 0 || used > height || strips[i].BeginsPage)
            {
                used = strips[i].HeadHeight() + strips[i].Height;
            }
        }

        return used / (double)height;
    }

    /// <summary>What it costs to end a page after a strip with some room left.</summary>
    private static long CostAfter(IReadOnlyList<Strip> strips, int first, int last, int free, int height)
    {
        if (last + 1 == strips.Count)
        {
            return first > 0 && free > (1 - LeastOfLast) * height ? NearlyEmptyLast : 0;
        }

        var next = strips[last + 1];
        if (next.BeginsPage)
        {
            return 0;
        }

        var cost = strips[last].KeepsNext ? BrokenRule : strips[last].IsInside ? PartedRow : 0;
        var empty = Math.Max(0, free) / (double)height;
        cost += (long)(EmptyPage * empty * empty);
        if (next.Group == 0 || next.Group != strips[last].Group)
        {
            return cost + Elsewhere;
        }

        return cost + (next.InGroup < 2 || next.GroupCount - next.InGroup < 2 ? LoneStrip : PartedGroup);
    }
}
