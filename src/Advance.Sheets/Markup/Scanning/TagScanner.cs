using System.Text;

namespace Advance.Sheets.Markup.Scanning;

/// <summary>Reads tags with their attributes. What is wrong in one is a fault, and the rest of it is read all the same.</summary>
internal sealed class TagScanner(string text, MarkupFaults faults)
{
    private readonly References references = new(text, faults);
    private int at;
    private bool endsClosed;
    private bool endsInValue;

    /// <summary>Reads the tag that begins at an offset, and gives the offset after it.</summary>
    public (Node Tag, int After) Read(int start)
    {
        var closes = text[start + 1] == '/';
        at = start + (closes ? 2 : 1);
        var name = ReadName();
        var attributes = ReadAttributes(start, name);
        if (closes && (name.Length == 0 || attributes.Count > 0 || endsClosed))
        {
            faults.Add(start, "A closing tag holds a name and no more.");
        }

        return (closes ? new CloseTag(start, name) : new OpenTag(start, name, attributes, endsClosed), at);
    }

    private static bool IsNameLetter(char letter) => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' or ':' or '.';

    private string ReadName()
    {
        var start = at;
        while (at < text.Length && IsNameLetter(text[at]))
        {
            at++;
        }

        return text[start..at];
    }

    private List<Attribute> ReadAttributes(int tag, string name)
    {
        var found = new List<Attribute>();
        endsClosed = endsInValue = false;
        while (true)
        {
            SkipSpace();
            if (at == text.Length || text[at] == '<')
            {
                if (!endsInValue)
                {
                    faults.Add(tag, $"The tag of `{name}` is not closed.", "Write `>` at its end.");
                }

                return found;
            }

            if (text[at] == '>' || (text[at] == '/' && at + 1 < text.Length && text[at + 1] == '>'))
            {
                endsClosed = text[at] == '/';
                at += endsClosed ? 2 : 1;
                return found;
            }

            Add(found, ReadAttribute());
        }
    }

    private void Add(List<Attribute> found, Attribute? attribute)
    {
        if (attribute is not null && found.Exists(other => other.Name == attribute.Name))
        {
            faults.Add(attribute.At, $"`{attribute.Name}` stands here twice.", length: attribute.Name.Length);
        }
        else if (attribute is not null)
        {
            found.Add(attribute);
        }
    }

    private Attribute? ReadAttribute()
    {
        var start = at;
        var name = ReadName();
        if (name.Length == 0)
        {
            faults.Add(at, $"`{text[at]}` cannot stand in a tag.");
            at++;
            return null;
        }

        SkipSpace();
        if (at == text.Length || text[at] != '=')
        {
            faults.Add(start, $"`{name}` has no value.", $"Write `{name}=\"…\"`.", name.Length);
            return null;
        }

        at++;
        SkipSpace();
        if (at == text.Length || text[at] is not ('"' or '\''))
        {
            faults.Add(start, $"The value of `{name}` is not in quotes.", $"Write `{name}=\"…\"`.", name.Length);
            SkipBareValue();
            return null;
        }

        return new(start, name, ReadValue(start, name));
    }

    private string ReadValue(int start, string name)
    {
        var quote = text[at++];
        var value = new StringBuilder();
        while (at < text.Length && text[at] != quote && text[at] != '<')
        {
            if (text[at] == '&')
            {
                at = references.Read(at, value);
            }
            else
            {
                value.Append(text[at++]);
            }
        }

        if (at < text.Length && text[at] == quote)
        {
            at++;
        }
        else
        {
            endsInValue = true;
            faults.Add(
                start,
                $"The value of `{name}` does not end, or has markup in it.",
                "Close its quotes; of a cell take `.text`.",
                name.Length);
        }

        return value.ToString();
    }

    private void SkipBareValue()
    {
        while (at < text.Length && text[at] is not (' ' or '\t' or '\r' or '\n' or '>' or '<' or '/'))
        {
            at++;
        }
    }

    private void SkipSpace()
    {
        while (at < text.Length && text[at] is ' ' or '\t' or '\r' or '\n')
        {
            at++;
        }
    }
}
