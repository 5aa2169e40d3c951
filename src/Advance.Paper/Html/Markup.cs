using System.Globalization;
using System.Text;
using Advance.Paper.Setting;

namespace Advance.Paper.Html;

/// <summary>Writes elements. All text and all attributes are escaped here, and nowhere else.</summary>
internal sealed class Markup
{
    private readonly StringBuilder text = new(1 << 16);

    /// <summary>A reference to an id of this page.</summary>
    public static string Fragment(string id) => "#" + Uri.EscapeDataString(Id(id));

    /// <summary>An id as an attribute may have it: without spaces.</summary>
    public static string Id(string id)
    {
        foreach (var c in id)
        {
            if (char.IsWhiteSpace(c) || char.IsControl(c))
            {
                return string.Concat(id.Select(k => char.IsWhiteSpace(k) || char.IsControl(k) ? '_' : k));
            }
        }

        return id;
    }

    /// <summary>A length or a share with up to three digits after the point.</summary>
    public static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    public Markup Open(string name, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Tag(name, attributes);
        text.Append('>');
        return this;
    }

    public Markup Close(string name)
    {
        text.Append("</").Append(name).Append('>');
        if (IsBlock(name))
        {
            text.Append('\n');
        }

        return this;
    }

    /// <summary>An element without an end; the slash matters inside a picture, where a browser reads as XML does.</summary>
    public Markup Void(string name, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Tag(name, attributes);
        text.Append("/>");
        if (IsBlock(name))
        {
            text.Append('\n');
        }

        return this;
    }

    public Markup Element(string name, string content, params ReadOnlySpan<(string Name, string? Value)> attributes) =>
        Open(name, attributes).Text(content).Close(name);

    public Markup Text(string content)
    {
        Escape(content);
        return this;
    }

    /// <summary>Markup of our own; never what came with a document.</summary>
    public Markup Raw(string markup)
    {
        text.Append(markup);
        return this;
    }

    public override string ToString() => text.ToString();

    private static bool IsBlock(string name) =>
        name is not ("a" or "strong" or "small" or "span" or "data" or "time" or "b" or "i" or "label" or "text" or "tspan");

    private void Tag(string name, ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        text.Append('<').Append(name);
        foreach (var (key, value) in attributes)
        {
            if (value is null)
            {
                continue;
            }

            text.Append(' ').Append(key);
            if (value.Length == 0)
            {
                continue;
            }

            text.Append("=\"");
            Escape(value);
            text.Append('"');
        }
    }

    private void Escape(string content)
    {
        for (var i = 0; i < content.Length; i++)
        {
            var c = content[i];
            switch (c)
            {
                case '&':
                    text.Append("&amp;");
                    break;
                case '<':
                    text.Append("&lt;");
                    break;
                case '>':
                    text.Append("&gt;");
                    break;
                case '"':
                    text.Append("&quot;");
                    break;
                case '\'':
                    text.Append("&#39;");
                    break;
                default:
                    if (char.IsSurrogate(c) && !IsPair(content, i))
                    {
                        text.Append('\uFFFD');
                    }
                    else if (!Words.IsDropped(c))
                    {
                        text.Append(c);
                    }

                    break;
            }
        }
    }

    private static bool IsPair(string content, int i) =>
        char.IsHighSurrogate(content[i])
            ? i + 1 < content.Length && char.IsLowSurrogate(content[i + 1])
            : i > 0 && char.IsHighSurrogate(content[i - 1]);
}
