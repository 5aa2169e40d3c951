namespace Advance.Reading.Yaml;

/// <summary>Small questions to a text at a place.</summary>
internal static class RawText
{
    /// <summary>The end of the line that a place stands in: its line feed, or the end of the text.</summary>
    public static int EndOfLine(string text, int at) => text.IndexOf('\n', at) is var end and >= 0 ? end : text.Length;

    /// <summary>The next place in the line that is not a space or a tab; the line's end if there is none.</summary>
    public static int SkipBlanks(string text, int at, int end)
    {
        while (at < end && text[at] is ' ' or '\t')
        {
            at++;
        }

        return at;
    }

    /// <summary>How many spaces indent the line that starts here; a tab ends them.</summary>
    public static int Indent(string text, int start, int end) =>
        text.AsSpan(start, end - start).IndexOfAnyExcept(' ') is var first and >= 0 ? first : end - start;

    /// <summary>Where the comment of a line starts: a # after a blank or at the start.</summary>
    /// <param name="text">The text.</param>
    /// <param name="start">Where to look from; a # right here counts only after a blank.</param>
    /// <param name="end">The line's end, which is the answer where there is no comment.</param>
    public static int CommentIn(string text, int start, int end)
    {
        for (var at = start; at < end; at++)
        {
            if (text[at] == '#' && (at == 0 || IsBlank(text[at - 1])))
            {
                return at;
            }
        }

        return end;
    }

    /// <summary>One past the last unit that is not blank.</summary>
    public static int TrimEnd(string text, int start, int end)
    {
        while (end > start && IsBlank(text[end - 1]))
        {
            end--;
        }

        return end;
    }

    /// <summary>The first colon that ends a key: one before a blank or the end.</summary>
    public static int KeyColon(string text, int start, int end)
    {
        for (var at = start; at < end; at++)
        {
            if (text[at] == ':' && (at + 1 >= end || IsBlank(text[at + 1])))
            {
                return at;
            }
        }

        return -1;
    }

    /// <summary>One past the quote that closes the one at <paramref name="start"/>; -1 where none does before <paramref name="end"/>.</summary>
    public static int AfterQuote(string text, int start, int end)
    {
        var quote = text[start];
        for (var at = start + 1; at < end; at++)
        {
            if (quote == '"' && text[at] == '\\')
            {
                at++;
            }
            else if (text[at] == quote)
            {
                if (quote == '"' || at + 1 >= end || text[at + 1] != quote)
                {
                    return at + 1;
                }

                at++;
            }
        }

        return -1;
    }

    /// <summary>The same over several lines, as long as those stand deeper than a column; -1 where the quote is not closed on them.</summary>
    public static int AfterQuoteWithin(string text, int start, int parent)
    {
        var after = AfterQuote(text, start, text.Length);
        for (var line = EndOfLine(text, start) + 1; line < after; line = EndOfLine(text, line) + 1)
        {
            var end = EndOfLine(text, line);
            var first = SkipBlanks(text, line, end);
            if (first < end && first - line <= parent)
            {
                return -1;
            }
        }

        return after;
    }

    public static bool IsBlank(char one) => one is ' ' or '\t' or '\n';
}
