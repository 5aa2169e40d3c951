namespace Advance.Paper.Layout;

/// <summary>Parts a row of heights, in order, so that the tallest part is as low as can be.</summary>
internal static class Partition
{
    /// <summary>How many stand in each part. There are as many parts as asked for, or fewer when fewer are as low.</summary>
    public static List<int> Even(IReadOnlyList<int> heights, int parts)
    {
        var low = heights.Max();
        var high = heights.Sum();
        while (low < high)
        {
            var middle = low + ((high - low) / 2);
            if (Count(heights, middle).Count <= parts)
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return Count(heights, low);
    }

    private static List<int> Count(IReadOnlyList<int> heights, int most)
    {
        var counts = new List<int> { 0 };
        var used = 0;
        foreach (var height in heights)
        {
            if (used + height > most && counts[^1] > 0)
            {
                counts.Add(0);
                used = 0;
            }

            counts[^1]++;
            used += height;
        }

        return counts;
    }
}
