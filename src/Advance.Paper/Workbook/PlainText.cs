using System.Text;
using Advance.Paper.Tree;

namespace Advance.Paper.Workbook;

/// <summary>The text of a cell with its line breaks, as a workbook holds it.</summary>
internal static class PlainText
{
    public static string Of(IReadOnlyList<Inline> inlines)
    {
        if (inlines is [Text only])
        {
            return only.Value.Trim();
        }

        var text = new StringBuilder();
        foreach (var inline in inlines)
        {
            Add(inline, text, depth: 0);
        }

        return text.ToString().Trim();
    }

    private static void Add(Inline inline, StringBuilder text, int depth)
    {
        switch (inline)
        {
            case Text plain:
                text.Append(plain.Value);
                break;
            case Datum datum:
                text.Append(datum.Shown);
                break;
            case LineBreak:
                text.Append('\n');
                break;
            case Tag tag:
                text.Append(text.Length > 0 && text[^1] > ' ' ? " " : "").Append('[').Append(tag.Text).Append(']');
                break;
            case TickBox { Label.Length: > 0 } tick:
                text.Append(tick.Label).Append(": ");
                break;
            case Link link when depth < 8:
                foreach (var inner in link.Text)
                {
                    Add(inner, text, depth + 1);
                }

                break;
        }
    }
}
