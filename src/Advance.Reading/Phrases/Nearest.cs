namespace Advance.Reading.Phrases;

/// <summary>Guesses which of the known words was meant.</summary>
internal static class Nearest
{
    /// <summary>The nearest known word; null where none is near. Of two as near, the first wins.</summary>
    public static string? To(string word, IEnumerable<string> known)
    {
        string? best = null;
        var most = Math.Max(1, word.Length / 3) + 1;
        foreach (var candidate in known)
        {
            var distance = Distance(word.ToLowerInvariant(), candidate.ToLowerInvariant());
            if (distance < most)
            {
                (best, most) = (candidate, distance);
            }
        }

        return best;
    }

    // Letters put in, left out, changed, or two neighbours swapped: each counts one.
    private static int Distance(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > 6 || a.Length > 60)
        {
            return int.MaxValue;
        }

        var cost = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0 ? i + j : Cheapest(a, b, cost, i, j);
            }
        }

        return cost[a.Length, b.Length];
    }

    private static int Cheapest(string a, string b, int[,] cost, int i, int j)
    {
        var change = cost[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
        var best = Math.Min(change, Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1);
        var isSwap = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
        return isSwap ? Math.Min(best, cost[i - 2, j - 2] + 1) : best;
    }
}
