using Advance.Domain.Facts;

namespace Advance.Reading.Phrases;

/// <summary>What may follow any value: <c>TBC</c>, by whom, by when.</summary>
/// <param name="Body">How much of the text comes before it, without the spaces between; 0 for TBC alone.</param>
/// <param name="Who">Who must answer.</param>
/// <param name="By">By when.</param>
internal sealed record Tail(int Body, string? Who, WrittenDate? By)
{
    /// <summary>The pattern of the tail alone.</summary>
    public const string Pattern = @"[Tt][Bb][CcDdAa](?:\s+\S(?:[\s\S]*\S)?)?";

    /// <summary>The tail of a text; null where it has none.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="fault">What is wrong with a tail that is there.</param>
    public static Tail? Find(string text, out PhraseFault? fault)
    {
        fault = null;
        var at = FirstTbc(text);
        if (at < 0)
        {
            return null;
        }

        var start = at + 3;
        var rest = text[start..];
        WrittenDate? by = null;
        var byAt = LastBy(rest);
        if (byAt >= 0 && LooksLikeDate(rest.AsSpan(byAt + 3).TrimStart()))
        {
            by = ReadDate(rest, byAt + 3, start, out fault);
            rest = rest[..byAt];
        }

        var who = rest.Trim();
        who = who.StartsWith("by ", StringComparison.Ordinal) ? who[3..].TrimStart() : who;
        return new(text.AsSpan(0, at).TrimEnd().Length, who.Length > 0 ? who : null, by);
    }

    // TBC, TBD or TBA as a word of its own: what comes before it is the value.
    private static int FirstTbc(string text)
    {
        for (var at = 0; at + 3 <= text.Length; at++)
        {
            if (IsTbc(text.AsSpan(at, 3)) && (at == 0 || char.IsWhiteSpace(text[at - 1])) && (at + 3 == text.Length || char.IsWhiteSpace(text[at + 3])))
            {
                return at;
            }
        }

        return -1;
    }

    private static bool IsTbc(ReadOnlySpan<char> word) =>
        word[0] is 'T' or 't' && word[1] is 'B' or 'b' && word[2] is 'C' or 'c' or 'D' or 'd' or 'A' or 'a';

    private static int LastBy(string rest) => rest.LastIndexOf(" by ", StringComparison.Ordinal) is var at and >= 0 ? at + 1 : -1;

    // By whom may also be said with by: only what starts like a date must be one.
    private static bool LooksLikeDate(ReadOnlySpan<char> text)
    {
        var end = text.IndexOf(' ');
        var word = (end < 0 ? text : text[..end]).TrimEnd(',');
        return word is [>= '0' and <= '9', ..] || Dates.IsName(word);
    }

    private static WrittenDate? ReadDate(string rest, int from, int start, out PhraseFault? fault)
    {
        var date = rest[from..];
        var lead = date.Length - date.TrimStart().Length;
        if (Dates.Date.TryRead(date.Trim(), out var by, out fault))
        {
            return by;
        }

        fault = fault.Rule == "not-this" ? PhraseFaults.ByWhen(start + from + lead, date.Trim()) : fault with { Offset = fault.Offset + start + from + lead };
        return null;
    }
}
