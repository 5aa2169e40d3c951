namespace Advance.Domain.Naming;

/// <summary>Orders names as people do: <c>ch 2</c> before <c>ch 10</c>. Ordinal otherwise, so it is the same in every culture.</summary>
public sealed class Natural : IComparer<string>
{
    /// <summary>The only one.</summary>
    public static readonly Natural Order = new();

    private Natural()
    {
    }

    /// <summary>Compares two names; names that differ only in leading zeros compare ordinally.</summary>
    public static int Compare(string x, string y)
    {
        int i = 0, j = 0;
        while (i < x.Length && j < y.Length)
        {
            var step = char.IsAsciiDigit(x[i]) && char.IsAsciiDigit(y[j])
                ? CompareNumbers(TakeNumber(x, ref i), TakeNumber(y, ref j))
                : x[i++].CompareTo(y[j++]);
            if (step != 0)
            {
                return step;
            }
        }

        var rest = (x.Length - i).CompareTo(y.Length - j);
        return rest != 0 ? rest : string.CompareOrdinal(x, y);
    }

    int IComparer<string>.Compare(string? x, string? y) => Compare(x ?? "", y ?? "");

    private static ReadOnlySpan<char> TakeNumber(string text, ref int at)
    {
        var start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        return text.AsSpan(start, at - start).TrimStart('0');
    }

    private static int CompareNumbers(ReadOnlySpan<char> a, ReadOnlySpan<char> b) =>
        a.Length != b.Length ? a.Length.CompareTo(b.Length) : a.SequenceCompareTo(b);
}
