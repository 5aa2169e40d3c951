using Advance.Reading.Files;

namespace Advance.Reading.Yaml;

/// <summary>Walks a list in brackets or a map in braces, over as many lines as it takes.</summary>
/// <param name="source">The file.</param>
/// <param name="mending">Takes what is wrong.</param>
/// <param name="signs">Knows what a value may not start with.</param>
internal sealed class FlowScan(TextSource source, Mending mending, LeadingSign signs)
{
    private readonly string text = source.Text;
    private readonly Stack<FlowFrame> open = new();
    private int start;
    private int parent;
    private int at;

    /// <summary>Walks to the closing bracket.</summary>
    /// <param name="from">The outermost bracket.</param>
    /// <param name="column">The column of the key or dash that holds it: a line that starts no deeper is not part of it.</param>
    /// <returns>One past it; where it is missing, the end of the line at which the list was given up.</returns>
    public int Walk(int from, int column)
    {
        (start, parent, at) = (from, column, from);
        open.Clear();
        do
        {
            if (at >= text.Length || !Step())
            {
                return mending.IsHopeless ? text.Length : GiveUpUnclosed();
            }
        }
        while (open.Count > 0);

        return at;
    }

    // One sign, or one quoted text, comment or line end. False where the list cannot be walked on.
    private bool Step()
    {
        var sign = text[at];
        if (sign == '\n')
        {
            return NextLine();
        }

        if (RawText.IsBlank(sign))
        {
            at++;
            return true;
        }

        if (sign == '#' && RawText.IsBlank(text[at - 1]))
        {
            SkipComment();
            return true;
        }

        return sign switch
        {
            '[' or '{' when open.Count == 0 || open.Peek().ExpectsStart => Open(sign),
            ']' or '}' => Close(sign),
            ',' => Comma(),
            ':' when EndsKey() => Colon(),
            _ => Content(sign),
        };
    }

    private bool NextLine()
    {
        at++;
        var end = RawText.EndOfLine(text, at);
        var first = RawText.SkipBlanks(text, at, end);
        var isPart = first == end || text[first] is '#' or ']' or '}' || first - at > parent;
        at = isPart ? first : at - 1;
        return isPart;
    }

    private void SkipComment()
    {
        var end = RawText.EndOfLine(text, at);
        var line = source.StartOf(source.MarkAt(at, 1).Line);
        var isWholeLine = RawText.SkipBlanks(text, line, at) == at;
        if (!isWholeLine)
        {
            var entry = open.Peek().Entry;
            foreach (var finding in CommentScan.Look(source, entry < 0 ? at : Math.Max(entry, line), at, end))
            {
                mending.Report(finding);
            }
        }

        at = end;
    }

    private bool Open(char sign)
    {
        if (open.Count == TreeBuilder.MostDepth)
        {
            mending.GiveUp(SyntaxFindings.TooDeep(source.MarkAt(at, 1), TreeBuilder.MostDepth));
            return false;
        }

        if (open.TryPeek(out var outer))
        {
            outer.Entry = outer.Entry < 0 ? at : outer.Entry;
            outer.ExpectsStart = false;
        }

        open.Push(new(at, sign));
        at++;
        return true;
    }

    private bool Close(char sign)
    {
        if (!open.Peek().IsClosedBy(sign))
        {
            return false;
        }

        EndEntry();
        open.Pop();
        at++;
        return true;
    }

    private bool Comma()
    {
        EndEntry();
        open.Peek().StartEntry();
        at++;
        return true;
    }

    // An entry of a map without a colon: the comma before it was meant as part of a value.
    private void EndEntry()
    {
        var frame = open.Peek();
        if (frame.Open == '{' && frame.Entry >= 0 && frame.Colon < 0)
        {
            var end = RawText.TrimEnd(text, frame.Entry, at);
            mending.Report(TrapFindings.CommaInBraces(source.MarkAt(frame.Entry, end - frame.Entry), text[frame.Entry..end].ReplaceLineEndings(" ")));
            mending.Spoil(frame.Entry, end);
        }
    }

    private bool EndsKey() =>
        at + 1 >= text.Length || RawText.IsBlank(text[at + 1]) || text[at + 1] is ',' or '[' or ']' or '{' or '}' || text[at - 1] is '"' or '\'';

    private bool Colon()
    {
        var frame = open.Peek();
        if (frame.Colon >= 0)
        {
            mending.Report(TrapFindings.SecondColonInBraces(source.MarkAt(at, 1)));
            SpoilRest(RawText.SkipBlanks(text, frame.Colon + 1, at));
            return true;
        }

        frame.Colon = at;
        frame.ExpectsStart = true;
        at++;
        return true;
    }

    private bool Content(char sign)
    {
        var frame = open.Peek();
        var starts = frame.ExpectsStart;
        frame.Entry = frame.Entry < 0 ? at : frame.Entry;
        frame.ExpectsStart = false;
        if (!starts)
        {
            at++;
            return true;
        }

        if (sign is '"' or '\'')
        {
            return Quoted();
        }

        if (signs.Find(at, EndOfEntry(at), out var found) is { } trap)
        {
            mending.Report(trap);
            SpoilRest(at);
            return true;
        }

        at = found;
        frame.ExpectsStart = found < text.Length && sign == '&';
        return true;
    }

    private bool Quoted()
    {
        var after = RawText.AfterQuoteWithin(text, at, parent);
        if (after < 0)
        {
            return false;
        }

        var next = after;
        while (next < text.Length && RawText.IsBlank(text[next]))
        {
            next++;
        }

        if (next < text.Length && text[next] is not (',' or ']' or '}' or ':' or '#'))
        {
            mending.Report(TrapFindings.AfterClose(source.MarkAt(next, 1), text[at]));
            SpoilRest(at);
            return true;
        }

        at = after;
        return true;
    }

    // The value up to the comma or bracket that ends it.
    private void SpoilRest(int from)
    {
        var end = EndOfEntry(at);
        mending.Spoil(from, end);
        at = end;
    }

    private int EndOfEntry(int from)
    {
        var end = from;
        while (end < text.Length && text[end] is not (',' or ']' or '}' or '\n') && !(text[end] == '#' && RawText.IsBlank(text[end - 1])))
        {
            end++;
        }

        return RawText.TrimEnd(text, from, end);
    }

    private int GiveUpUnclosed()
    {
        var (bad, sign) = open.Count == 0 ? (start, text[start]) : (open.Peek().At, open.Peek().Open);
        if (at < text.Length && text[at] is '"' or '\'')
        {
            (bad, sign) = (at, text[at]);
        }

        mending.Report(TrapFindings.Unclosed(source.MarkAt(bad, 1), sign));
        var end = RawText.EndOfLine(text, Math.Min(at, text.Length));
        mending.Spoil(start, end);
        return end;
    }
}
