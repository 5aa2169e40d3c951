using System.Globalization;

namespace Advance.Sheets.Views;

/// <summary>Names of things that are alike, in one line: <c>T1-1 to T1-5, PD1 outlet 1, 3, shackle of A-1, B-1</c>.</summary>
internal static class NameList
{
    // More words than these of its own, and a name is told in full.
    private const int MostOwn = 2;

    /// <summary>In the order given, each once: three or more that are numbered in a row by the first and the last, and none repeats the words that it shares with the one before.</summary>
    public static string Say(IEnumerable<string> names)
    {
        var all = names.Distinct(StringComparer.Ordinal).ToList();
        var said = new List<string>();
        for (var at = 0; at < all.Count;)
        {
            var count = InARow(all, at);
            var own = at == 0 ? all[at] : Own(all[at], all[at - 1]);
            said.Add(count > 2 ? $"{own} to {all[at + count - 1].Split(' ')[^1]}" : own);
            at += count > 2 ? count : 1;
        }

        return string.Join(", ", said);
    }

    private static int InARow(List<string> names, int from)
    {
        var (head, number) = Numbered(names[from]);
        var count = 1;
        while (number is not null && from + count < names.Count && Numbered(names[from + count]) == (head, number + count))
        {
            count++;
        }

        return count;
    }

    private static string Own(string name, string before)
    {
        var (words, others) = (name.Split(' '), before.Split(' '));
        var shared = words.Zip(others).TakeWhile(pair => pair.First == pair.Second).Count();
        return words.Length - shared > MostOwn ? name : string.Join(' ', words[shared..]);
    }

    // "T1-5": T1- and 5.
    private static (string Head, int? Number) Numbered(string name)
    {
        var head = name.TrimEnd(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9']);
        return int.TryParse(name.AsSpan(head.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && !name.AsSpan(head.Length).StartsWith("0", StringComparison.Ordinal)
            ? (head, number)
            : (name, null);
    }
}
