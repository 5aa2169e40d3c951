using System.Text;
using Advance.Sheets.Markup.Subset;

namespace Advance.Sheets.Markup;

/// <summary>Writes the guide to the markup from the same table that markup is read by.</summary>
public static class MarkupGuide
{
    private const string Introduction = """
        # The markup of sheets

        A template writes its sheets in a small part of XHTML. Elements, attributes and words of a class that do not stand here are faults, told
        with template, line and column; so are an element in a wrong place, one that is not closed, and an attribute without quotes.

        - An element that holds nothing is closed at once: `<br/>`. All others may be, too: `<td/>`.
        - Five letters have names, `&amp;` `&lt;` `&gt;` `&quot;` `&apos;`; each can be written as its number, `&#160;`. There are no other entities.
        - Indentation and line ends count as one blank between words, and as nothing at both ends of a line. A `&#32;` always stays.
        - Comments are left out. Declarations, CDATA sections and processing instructions are faults.
        - Numbers have a point as decimal sign, lengths on paper are in mm.


        """;

    /// <summary>A page in Markdown: each element with what it means, where it stands, what it holds, what can be said about it, an example.</summary>
    public static string Write()
    {
        var page = new StringBuilder(Introduction.ReplaceLineEndings("\n"));
        Write(page, "Sheets", SheetForms.All);
        Write(page, "Blocks", BlockForms.All);
        Write(page, "Blocks that hold others, drawings, cautions and remarks", GroupForms.All);
        Write(page, "Tables", TableForms.All);
        Write(page, "Pieces of a line", LineForms.All);
        return page.ToString().TrimEnd('\n') + "\n";
    }

    private static void Write(StringBuilder page, string title, IReadOnlyList<Form> forms)
    {
        page.Append("## ").Append(title).Append("\n\n");
        foreach (var form in forms)
        {
            Write(page, form);
        }
    }

    private static void Write(StringBuilder page, Form form)
    {
        page.Append("### `").Append(form.Title).Append("`\n\n").Append(Sentence(form.Means)).Append('\n');
        page.Append("Stands in ").Append(HoldersOf(form)).Append(". Holds ").Append(ContentsOf(form)).Append(".\n\n");
        foreach (var attribute in form.Attributes)
        {
            page.Append($"- `{attribute.Name}`{(attribute.IsRequired ? " (always)" : "")}: {attribute.Value.Says}; {attribute.Means}\n");
        }

        foreach (var word in form.Words)
        {
            page.Append($"- `class=\"{word.Word}\"`: {word.Means}\n");
        }

        page.Append(form.Attributes.Count + form.Words.Count > 0 ? "\n" : "");
        if (form.Example.Length > 0)
        {
            page.Append("```html\n").Append(form.Example.ReplaceLineEndings("\n")).Append("\n```\n\n");
        }
    }

    private static string HoldersOf(Form form)
    {
        var holders = Forms.All.Where(other => other.CanHold(form) && !(IsLine(form) && IsLineOf(other))).Select(Named);
        var all = string.Join(", ", IsLine(form) ? holders.Prepend("a line of text") : holders);
        return all.Length > 0 ? all : "no other element";
    }

    private static string ContentsOf(Form form) => form.Holds switch
    {
        Content.None => "nothing",
        Content.Text => "text",
        Content.Block => "blocks",
        _ when IsLineOf(form) => "a line of text",
        _ => string.Join(", ", Forms.All.Where(form.CanHold).Select(Named)) + (form.Holds.HasFlag(Content.Text) ? ", text" : ""),
    };

    private static bool IsLine(Form form) => form.Is.HasFlag(Content.Line);

    private static bool IsLineOf(Form form) => form.Holds.HasFlag(Content.Line);

    private static string Named(Form form) => $"`{form.Title}`";

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..] + ".";
}
