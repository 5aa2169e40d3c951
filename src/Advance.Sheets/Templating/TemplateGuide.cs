using System.Text;

namespace Advance.Sheets.Templating;

/// <summary>Writes the guide to what templates can do from the same table that they find their functions in.</summary>
public static class TemplateGuide
{
    private const string Introduction = """
        # Writing templates

        A template is text in the markup of sheets with Scriban between double braces. `{{ row.channel }}` prints a value, `{{ for row in rows }}`
        … `{{ end }}` repeats, `{{ if row.note }}` … `{{ else }}` … `{{ end }}` chooses.

        - Each value is escaped, in text and in attributes. Nothing has to be done for it, and nothing can be done against it.
        - A cell prints all there is to it: its words, its value for the workbook, a TBC tag, and how it was judged. In an attribute, a comparison or
          a longer text write what is meant: `row.channel.text`.
        - Nothing, an empty text, a blank cell and an empty list are false. A zero is true, because it prints.
        - A name that is not known is a fault. `row.note?.text` is for what may be missing.
        - A partial sees the view and what it is given by name: `{{ include "partials/contact.html" person: row }}`, and in the partial
          `{{ person.name }}`. What may be left out is asked for as `{{ given.note }}`. It does not see what its caller named, loops included.
        - What is given to a function or a partial ends at the next blank: a sum stands in parentheses, `count: (n + 1)`.
        - There is no clock, no chance and no file, and a template that runs on and on is stopped.

        ## Functions


        """;

    /// <summary>A page in Markdown.</summary>
    public static string Write()
    {
        var page = new StringBuilder(Introduction.ReplaceLineEndings("\n"));
        page.Append("| function | what it does | example | prints |\n|---|---|---|---|\n");
        foreach (var function in TemplateFunctions.All)
        {
            var example = Code("{{ " + function.Example + " }}");
            page.Append($"| `{function.Name}` | {function.Means} | {example} | {Code(function.Prints.TrimEnd())} |\n");
        }

        return page.ToString();
    }

    // In a Markdown table even code has to escape the bar.
    private static string Code(string code) => $"`{code.Replace("|", "\\|", StringComparison.Ordinal)}`";
}
