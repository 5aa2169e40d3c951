namespace Advance.Sheets.Drawings;

/// <summary>Channels in few words: <c>1–7 · 17</c>.</summary>
internal static class ChannelWords
{
    /// <summary>Ascending, runs as a range.</summary>
    public static string Of(IEnumerable<int> channels)
    {
        var words = new List<string>();
        var sorted = channels.Distinct().Order().ToList();
        for (var start = 0; start < sorted.Count;)
        {
            var end = start;
            while (end + 1 < sorted.Count && sorted[end + 1] == sorted[end] + 1)
            {
                end++;
            }

            words.Add(end - start >= 1 ? $"{sorted[start]}–{sorted[end]}" : $"{sorted[start]}");
            start = end + 1;
        }

        return string.Join(" · ", words);
    }
}
