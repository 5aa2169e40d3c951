namespace Advance.Sheets.Templating;

/// <summary>Finds what somebody may have meant by a name that is not known.</summary>
internal static class NearestName
{
    private const int MostListed = 12;

    /// <summary>The cure for an unknown name: the nearest known one, or all where they are few, or nothing.</summary>
    public static string Cure(string unknown, IReadOnlyCollection<string> known)
    {
        if (Of(unknown, known) is { } nearest)
        {
            return $"Did you mean `{nearest}`?";
        }

        return known.Count is > 0 and <= MostListed ? $"Known here: {string.Join(", ", known.Select(name => $"`{name}`"))}." : "";
    }

    /// <summary>
    /// The known name with the fewest letters to change, at most a third of them. Where two are as near, the one with the same first letter,
    /// which people seldom get wrong; then the first in order.
    /// </summary>
    public static string? Of(string unknown, IEnumerable<string> known)
    {
        var best = (Name: (string?)null, Changes: Math.Max(1, unknown.Length / 3) + 1);
        var likely = known.OrderBy(name => name.FirstOrDefault() == unknown.FirstOrDefault() ? 0 : 1).ThenBy(name => name, StringComparer.Ordinal);
        foreach (var name in likely)
        {
            var changes = Changes(unknown, name, best.Changes);
            if (changes < best.Changes)
            {
                best = (name, changes);
            }
        }

        return best.Name;
    }

    /// <summary>
    /// Letters to put in, leave out, change or swap with their neighbour; <paramref name="most"/> where there are as many or more.
    /// </summary>
    private static int Changes(string a, string b, int most)
    {
        if (Math.Abs(a.Length - b.Length) >= most)
        {
            return most;
        }

        var before = new int[b.Length + 1];
        var last = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var row = new int[b.Length + 1];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var same = char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]);
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + (same ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            (before, last) = (last, row);
        }

        return last[b.Length];
    }
}
