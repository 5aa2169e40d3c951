using System.Text;

namespace Advance.Sheets.Markup.Scanning;

/// <summary>
/// Takes markup apart into tags and text. It is written by hand because it goes on after a fault, knows the offset of all it finds, keeps
/// white space that came with a value apart from a template's indentation, and needs no time to warm up; the platform's reader does none of
/// these. There are no declarations, sections, instructions or entities of one's own.
/// </summary>
internal sealed class Scanner(string text, MarkupFaults faults)
{
    private readonly References references = new(text, faults);
    private readonly TagScanner tags = new(text, faults);
    private int at;

    /// <summary>The next tag or text, or null at the end.</summary>
    public Node? Next()
    {
        while (at < text.Length)
        {
            if (!IsMarkup(at))
            {
                return ReadCharacters();
            }

            if (text[at + 1] is '!' or '?')
            {
                at = Skip();
                continue;
            }

            (var tag, at) = tags.Read(at);
            return tag;
        }

        return null;
    }

    private static bool IsIndentation(char letter) => letter is ' ' or '\t' or '\r' or '\n';

    private bool IsMarkup(int place) =>
        text[place] == '<' && place + 1 < text.Length && (char.IsAsciiLetter(text[place + 1]) || text[place + 1] is '/' or '!' or '?');

    private Characters ReadCharacters()
    {
        var (start, found) = (-1, new StringBuilder());
        bool leads = false, waits = false;
        while (at < text.Length && !IsMarkup(at))
        {
            if (IsIndentation(text[at]))
            {
                waits = true;
                at++;
                continue;
            }

            start = start < 0 ? at : start;
            leads |= waits && found.Length == 0;
            found.Append(waits && found.Length > 0 ? " " : "");
            waits = false;
            ReadCharacter(found);
        }

        return new(start < 0 ? at - 1 : start, found.ToString(), leads || found.Length == 0, waits);
    }

    private void ReadCharacter(StringBuilder found)
    {
        if (text[at] == '&')
        {
            at = references.Read(at, found);
            return;
        }

        if (text[at] == '<')
        {
            faults.Add(at, "A `<` that stands for itself is written `&lt;`.");
        }

        found.Append(text[at++]);
    }

    private int Skip()
    {
        var isComment = string.CompareOrdinal(text, at, "<!--", 0, 4) == 0;
        if (!isComment)
        {
            faults.Add(at, "Only elements, text and comments can stand here.");
        }

        var end = isComment ? "-->" : ">";
        var found = text.IndexOf(end, isComment ? at + 4 : at, StringComparison.Ordinal);
        if (found < 0 && isComment)
        {
            faults.Add(at, "This comment is not closed.", "Write `-->` at its end.");
        }

        return found < 0 ? text.Length : found + end.Length;
    }
}
