using Advance.Reading.Files;

namespace Advance.Reading.Yaml;

/// <summary>
/// Looks at the raw lines before the parser does, and speaks plainly about what trips people. It follows the file's structure just far
/// enough to know what a line is: a key, an item, text that goes on, part of a block. What it is not sure of it leaves to the parser.
/// </summary>
internal sealed class LineScan(TextSource source, Mending mending)
{
    private readonly string text = source.Text;
    private readonly Stack<int> levels = new();
    private readonly ValueScan values = new(source, mending);
    private ScannedValue last = ScannedValue.None;

    /// <summary>Looks at all lines.</summary>
    public void Run()
    {
        for (var at = 0; at < text.Length && !mending.IsHopeless;)
        {
            at = Line(at);
        }
    }

    // Looks at the line that starts here, and at those that its value goes on over; gives the start of the next.
    private int Line(int start)
    {
        var end = RawText.EndOfLine(text, start);
        var first = RawText.SkipBlanks(text, start, end);
        if (first == end || text[first] == '#' || IsDocumentSign(start, end))
        {
            return end + 1;
        }

        if (text.AsSpan(start, first - start).IndexOf('\t') is var tab and >= 0)
        {
            mending.GiveUp(Tabs.Report(source, start + tab));
            return end + 1;
        }

        if (last.EndsLine && first - start > last.Parent)
        {
            return GoesOn(first, end);
        }

        var content = Dashes(start, first, end);
        if (content == end)
        {
            last = ScannedValue.Open(first - start);
            return end + 1;
        }

        return Key(start, content, end);
    }

    private bool IsDocumentSign(int start, int end) =>
        text.AsSpan(start, end - start) is var line && (line.StartsWith("---") || line.StartsWith("...") || (line.StartsWith("%") && levels.Count == 0));

    // Skips the dashes of list items, which may stand in a row: each starts a level of its own.
    private int Dashes(int start, int at, int end)
    {
        while (at < end && text[at] == '-' && (at + 1 == end || RawText.IsBlank(text[at + 1])))
        {
            LeaveLevelsBeyond(at - start);
            last = ScannedValue.Open(at - start);
            at = RawText.SkipBlanks(text, at + 1, end);
            if (at < end && text[at] == '#')
            {
                return end;
            }
        }

        return at;
    }

    private int Key(int start, int at, int end)
    {
        var column = at - start;
        var colon = KeyEnd(at, end);
        if (colon < 0)
        {
            return Keyless(start, at, end);
        }

        if (IsBetweenLevels(column))
        {
            mending.GiveUp(TrapFindings.IndentedBetween(source.MarkAt(at, colon - at)));
            return text.Length;
        }

        if (levels.Count == 0 || levels.Peek() < column)
        {
            levels.Push(column);
        }

        last = values.Look(colon + 1, end, column, at, out var next);
        return next;
    }

    // The colon after a key in quotes, or after a plain one that no comment comes before; -1 where the text is none.
    private int KeyEnd(int at, int end)
    {
        if (text[at] is '"' or '\'')
        {
            var after = RawText.AfterQuote(text, at, end);
            var colon = after < 0 ? end : RawText.SkipBlanks(text, after, end);
            return colon < end && RawText.KeyColon(text, colon, end) == colon ? colon : -1;
        }

        return text[at] is '[' or '{' or '|' or '>' ? -1 : RawText.KeyColon(text, at, RawText.CommentIn(text, at, end));
    }

    // A line without a key: a value that stands below its key or beside its dash, or a key without its colon.
    private int Keyless(int start, int at, int end)
    {
        var column = at - start;
        if (last.IsOpen && column > last.Parent)
        {
            last = values.Look(at, end, last.Parent, at, out var next);
            return next;
        }

        if (text[at] is '[' or '{' or '"' or '\'' or '?')
        {
            return end + 1;
        }

        LeaveLevelsBeyond(column);
        var stop = RawText.TrimEnd(text, at, RawText.CommentIn(text, at, end));
        var glued = text.AsSpan(at, stop - at).IndexOf(':');
        mending.Report(glued > 0
            ? TrapFindings.NoSpace(source.MarkAt(at, glued + 1), text[at..(at + glued)])
            : TrapFindings.NoColon(source.MarkAt(at, stop - at), text[at..stop]));
        mending.SpoilAsKey(at, stop);
        last = ScannedValue.None;
        return end + 1;
    }

    // A line under a value that is complete or goes on: a key here was indented one step too far.
    private int GoesOn(int at, int end)
    {
        var stop = RawText.CommentIn(text, at, end);
        var colon = RawText.KeyColon(text, at, stop);
        if (colon > at && !last.IsReported)
        {
            mending.Report(TrapFindings.IndentedUnderValue(source.MarkAt(at, colon - at), Above()));
            mending.Spoil(last.Key.Start, last.Key.End);
            last = last with { IsReported = true };
        }

        if (last.IsReported)
        {
            mending.Blank(at, end);
        }

        return end + 1;
    }

    private string Above() => last.Key.Length > 0 ? text[last.Key.Start..last.Key.End] : "a line";

    private bool IsBetweenLevels(int column)
    {
        var left = LeaveLevelsBeyond(column);
        return left && (levels.Count == 0 || levels.Peek() != column);
    }

    private bool LeaveLevelsBeyond(int column)
    {
        var left = false;
        while (levels.Count > 0 && levels.Peek() > column)
        {
            levels.Pop();
            left = true;
        }

        return left;
    }
}
