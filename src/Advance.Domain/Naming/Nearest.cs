namespace Advance.Domain.Naming;

/// <summary>Guesses which of the known words was meant by one that is not known.</summary>
public static class Nearest
{
    /// <summary>
    /// The known word with the fewest letters to change, at most a third of them, capitals aside; null where none is near. Where two are as
    /// near, the one with the same first letter, which people seldom get wrong; then the first in ordinal order.
    /// </summary>
    public static string? To(string word, IEnumerable<string> known)
    {
        var best = (Word: (string?)null, Changes: Math.Max(1, word.Length / 3) + 1);
        var likely = known.OrderBy(candidate => candidate.FirstOrDefault() == word.FirstOrDefault() ? 0 : 1).ThenBy(candidate => candidate, StringComparer.Ordinal);
        foreach (var candidate in likely)
        {
            var changes = Changes(word.ToLowerInvariant(), candidate.ToLowerInvariant(), best.Changes);
            if (changes < best.Changes)
            {
                best = (candidate, changes);
            }
        }

        return best.Word;
    }

    // Letters to put in, leave out, change or swap with their neighbour; `most` where there are as many or more.
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
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
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
