using Advance.Paper.Tree;

namespace Advance.Paper.Html;

/// <summary>Writes what stands over the sheets: the contents, and the tools that a script brings to life.</summary>
internal static class PageHead
{
    private const string All = "all";

    public static void Write(Markup page, Document document, Wording words)
    {
        page.Open("nav", ("aria-label", document.Info.Title));
        WriteTools(page, document, words);
        if (document.Sheets.Count > 1)
        {
            page.Open("ol");
            foreach (var sheet in document.Sheets)
            {
                page.Open("li").Element("a", sheet.Title, ("href", Markup.Fragment(sheet.Id))).Close("li");
            }

            page.Close("ol");
        }

        page.Close("nav");
    }

    // Hidden until the script is there: without it they would do nothing.
    private static void WriteTools(Markup page, Document document, Wording words)
    {
        var issue = $"{document.Info.Title} {document.Sheets.Select(sheet => sheet.Head.Revision).FirstOrDefault()}";
        page.Open("form", ("id", "tools"), ("hidden", "hidden"), ("data-issue", issue), ("data-found", words.Found), ("data-question", words.ClearTicksQuestion));
        page.Open("label").Text(words.SheetsFor + " ").Open("select", ("name", "reader")).Element("option", words.Everybody, ("value", All));
        foreach (var reader in document.Sheets.SelectMany(sheet => sheet.Readers).Where(reader => reader != All).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            page.Element("option", reader, ("value", reader));
        }

        page.Close("select").Close("label");
        page.Open("label").Text(words.Find + " ").Void("input", ("type", "search"), ("name", "find"), ("autocomplete", "off")).Close("label");
        page.Open("output", ("name", "found"), ("role", "status")).Close("output");
        page.Element("button", words.ClearTicks, ("type", "button"), ("name", "clear")).Close("form");
    }
}
