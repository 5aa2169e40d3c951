using System.Globalization;
using Advance.Paper.Layout;
using Advance.Paper.Setting;
using Advance.Paper.Tree;

namespace Advance.Paper.Html;

/// <summary>Writes a document as one page that needs no other file and no network.</summary>
internal static class HtmlWriter
{
    public static string Write(Document document, DocumentLayout laid, PrintOptions options)
    {
        var page = new Markup();
        page.Raw("<!DOCTYPE html>\n").Open("html", ("lang", document.Info.Language)).Open("head");
        page.Void("meta", ("charset", "utf-8"));
        page.Void("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"));
        // Nothing is fetched from anywhere, whatever a template or a name says.
        page.Void("meta", ("http-equiv", "Content-Security-Policy"),
            ("content", "default-src 'none'; style-src 'unsafe-inline'; script-src 'unsafe-inline'; img-src data:; font-src data:"));
        Meta(page, "author", document.Info.Author);
        Meta(page, "description", document.Info.Subject);
        Meta(page, "keywords", document.Info.Keywords);
        if (document.Info.Issued is { } day)
        {
            Meta(page, "date", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        }

        page.Element("title", document.Info.Title);
        page.Raw("<style>\n").Raw(StyleSheet()).Raw(Harmless(options.StyleSheet, "</style")).Raw("</style>\n").Close("head").Open("body");
        PageHead.Write(page, document, options.Words);
        page.Open("main");
        foreach (var sheet in document.Sheets)
        {
            new SheetHtml(page, laid, options.Words).Write(sheet);
        }

        page.Close("main");
        Script(page, System.Text.Encoding.UTF8.GetString(BuiltIn.Resource("page.js")));
        Script(page, options.Script);

        return page.Close("body").Close("html").ToString();
    }

    private static void Meta(Markup page, string name, string content)
    {
        if (content.Length > 0)
        {
            page.Void("meta", ("name", name), ("content", content));
        }
    }

    private static void Script(Markup page, string script)
    {
        if (script.Length > 0)
        {
            page.Raw("<script>\n").Raw(Harmless(script, "</script")).Raw("\n</script>\n");
        }
    }

    private static string StyleSheet() =>
        FontFaces.Css() + System.Text.Encoding.UTF8.GetString(BuiltIn.Resource("sheet.css"));

    /// <summary>A company's style sheet and script are its own, but may not end their element by accident.</summary>
    private static string Harmless(string text, string end) => text.Replace(end, end.Insert(1, "\\"), StringComparison.OrdinalIgnoreCase);
}
