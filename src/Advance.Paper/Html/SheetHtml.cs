using Advance.Paper.Layout;
using Advance.Paper.Tree;

namespace Advance.Paper.Html;

/// <summary>Writes one sheet as a section of the page.</summary>
internal sealed class SheetHtml(Markup page, DocumentLayout laid, Wording words)
{
    private readonly InlineHtml inlines = new(page, laid, words);

    public void Write(Sheet sheet)
    {
        var type = sheet.Setup.Class switch { TypeClass.Desk => "desk", TypeClass.Floor => "floor", _ => "tape-up" };
        page.Open("section", ("class", $"sheet {type}"), ("id", Markup.Id(sheet.Id)), ("data-readers", sheet.Readers.Count > 0 ? string.Join(' ', sheet.Readers) : null));
        WriteHead(sheet.Head);
        new BlockHtml(page, laid, inlines, words).Write(sheet.Blocks);
        page.Open("footer").Open("div");
        inlines.Write(sheet.Foot.Left);
        page.Close("div").Open("div");
        inlines.Write(sheet.Foot.Right);
        page.Close("div").Close("footer").Close("section");
    }

    private void WriteHead(SheetHead head)
    {
        page.Open("header").Open("div", ("class", "title")).Element("h1", head.Title);
        if (head.For.Count > 0)
        {
            Line(head.For, "for");
        }

        page.Close("div").Open("div", ("class", "gig"));
        foreach (var line in head.Lines)
        {
            Line(line, null);
        }

        page.Close("div");
        if (head.Revision.Length > 0)
        {
            page.Element("div", head.Revision, ("class", head.Revision.Length <= 2 ? "revision" : "revision word"));
        }

        if (head.Issued.Length > 0)
        {
            page.Open("div", ("class", "issued")).Text(words.Issued).Raw("<br>").Element("strong", head.Issued).Close("div");
        }

        page.Close("header");
    }

    private void Line(IReadOnlyList<Inline> line, string? kind)
    {
        page.Open("p", ("class", kind));
        inlines.Write(line);
        page.Close("p");
    }
}
