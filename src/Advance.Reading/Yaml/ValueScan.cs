using System.Buffers;
using Advance.Domain.Findings;
using Advance.Reading.Files;

namespace Advance.Reading.Yaml;

/// <summary>Looks at what stands after a key's colon or a dash.</summary>
internal sealed class ValueScan(TextSource source, Mending mending)
{
    private static readonly SearchValues<char> BlockIndicators = SearchValues.Create("+-123456789");

    private readonly string text = source.Text;
    private readonly LeadingSign signs = new(source);

    /// <summary>Looks at one value, over as many lines as it takes.</summary>
    /// <param name="from">Where it may start.</param>
    /// <param name="end">The end of its line.</param>
    /// <param name="parent">The column of its key or dash.</param>
    /// <param name="key">Where its key starts, or the value itself in a list.</param>
    /// <param name="next">The start of the line after the value.</param>
    public ScannedValue Look(int from, int end, int parent, int key, out int next)
    {
        next = end + 1;
        var at = RawText.SkipBlanks(text, from, end);
        var keySpan = new Span(key, Math.Max(key, from - 1));
        var stop = RawText.CommentIn(text, Math.Max(at - 1, 0), end);
        if (at >= stop)
        {
            LookAtComment(key, stop, end);
            return ScannedValue.Open(parent);
        }

        if (text[at] is '|' or '>')
        {
            next = Block(at, stop, end, parent);
            return ScannedValue.None with { Parent = parent };
        }

        if (text[at] is '[' or '{' or '"' or '\'')
        {
            next = Enclosed(at, parent);
            return ScannedValue.Written(parent, keySpan);
        }

        return LookAtLine(at, stop, end, parent, keySpan, ref next);
    }

    // A value that starts and, as far as is known, ends on its line.
    private ScannedValue LookAtLine(int at, int stop, int end, int parent, Span key, ref int next)
    {
        var tail = RawText.TrimEnd(text, at, stop);
        var trap = signs.Find(at, tail, out var past);
        if (text[at] == '&' && (trap is null || IsAlone(at, past, tail, end, parent)))
        {
            return Look(past, end, parent, key.Start, out next);
        }

        if (text[at] == '!' && text.AsSpan(at, tail - at).IndexOf(' ') < 0 && HasLinesBelow(end, parent))
        {
            mending.Report(trap!);
            mending.Blank(at, tail);
            return ScannedValue.Open(parent);
        }

        trap ??= Colon(at, tail) ?? Dash(at, tail);
        if (trap is not null)
        {
            mending.Report(trap);
            mending.Spoil(at, tail);
        }

        LookAtComment(at, stop, end);
        return ScannedValue.Written(parent, key);
    }

    // An anchor in front of the lines below it does no harm, even if nothing repeats it.
    private bool IsAlone(int at, int past, int tail, int end, int parent) => past > at + 1 && past == tail && HasLinesBelow(end, parent);

    private Finding? Colon(int at, int tail) =>
        RawText.KeyColon(text, at, tail) is var colon and >= 0 ? TrapFindings.SecondColon(source.MarkAt(colon, 1)) : null;

    private Finding? Dash(int at, int tail) =>
        text[at] == '-' && at + 1 < tail && RawText.IsBlank(text[at + 1]) ? TrapFindings.DashOnKeyLine(source.MarkAt(at, 1)) : null;

    private void LookAtComment(int valueStart, int hash, int end)
    {
        foreach (var finding in CommentScan.Look(source, valueStart, hash, end))
        {
            mending.Report(finding);
        }
    }

    // Steps over a block of lines: inside it nothing trips anybody.
    private int Block(int at, int stop, int end, int parent)
    {
        var header = RawText.TrimEnd(text, at, stop);
        if (text.AsSpan(at + 1, header - at - 1).IndexOfAnyExcept(BlockIndicators) >= 0)
        {
            mending.Report(TrapFindings.BlockText(source.MarkAt(at, 1), text[at]));
            mending.Spoil(at, header);
        }

        LookAtComment(at, stop, end);
        var next = end + 1;
        while (next < text.Length)
        {
            var lineEnd = RawText.EndOfLine(text, next);
            var indent = RawText.Indent(text, next, lineEnd);
            if (indent <= parent && RawText.SkipBlanks(text, next, lineEnd) < lineEnd)
            {
                break;
            }

            next = lineEnd + 1;
        }

        return next;
    }

    // A value in brackets, braces or quotes, which may go on over several lines, and what follows it.
    private int Enclosed(int at, int parent)
    {
        var after = text[at] is '[' or '{' ? new FlowScan(source, mending, signs).Walk(at, parent) : Quoted(at, parent);
        if (mending.IsHopeless)
        {
            return text.Length;
        }

        var end = RawText.EndOfLine(text, Math.Min(after, text.Length));
        var rest = RawText.SkipBlanks(text, after, end);
        if (rest < end && (text[rest] != '#' || rest == after))
        {
            var stop = RawText.CommentIn(text, rest, end);
            mending.Report(TrapFindings.AfterClose(source.MarkAt(rest, RawText.TrimEnd(text, rest, stop) - rest), text[at]));
            mending.Spoil(at, RawText.TrimEnd(text, rest, stop));
        }
        else
        {
            LookAtComment(at, rest, end);
        }

        return end + 1;
    }

    private int Quoted(int at, int parent)
    {
        var after = RawText.AfterQuoteWithin(text, at, parent);
        if (after >= 0)
        {
            return after;
        }

        var end = RawText.EndOfLine(text, at);
        mending.Report(TrapFindings.Unclosed(source.MarkAt(at, 1), text[at]));
        mending.Spoil(at, end);
        return end;
    }

    private bool HasLinesBelow(int end, int parent)
    {
        for (var next = end + 1; next < text.Length; next = RawText.EndOfLine(text, next) + 1)
        {
            var lineEnd = RawText.EndOfLine(text, next);
            var first = RawText.SkipBlanks(text, next, lineEnd);
            if (first < lineEnd && text[first] != '#')
            {
                return first - next > parent || (first - next == parent && text[first] == '-');
            }
        }

        return false;
    }
}
