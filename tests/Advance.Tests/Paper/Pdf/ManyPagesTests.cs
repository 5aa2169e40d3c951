using Advance.Paper;
using Advance.Paper.Pdf;
using Advance.Paper.Tree;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Pdf;

/// <summary>A PDF of so many pages that parts of it are written side by side and put together, as an independent reader finds it.</summary>
public sealed class ManyPagesTests
{
    private const int Sheets = 230;

    /// <summary>Each sheet is a page, says which, and leads to one far from it.</summary>
    public static Document Document { get; } = Doc([.. Enumerable.Range(1, Sheets).Select(OneOf)]);

    private static readonly Lazy<byte[]> Printed = new(() => Printer.Print(Document, new PrintOptions { Html = false, Workbook = false }).Pdf!);

    [Fact]
    public void Every_page_is_there_once_in_its_order_with_its_own_letters()
    {
        using var pdf = PdfDocument.Open(Printed.Value);

        Assert.Equal(Sheets, pdf.NumberOfPages);
        for (var page = 1; page <= Sheets; page++)
        {
            var words = string.Join(' ', pdf.GetPage(page).GetWords().Select(word => word.Text));
            Assert.Contains($"this is sheet {page} ", words, StringComparison.Ordinal);
            Assert.Contains($"page {page} of {Sheets}", words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Bookmarks_lead_to_every_page()
    {
        using var pdf = PdfDocument.Open(Printed.Value);

        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(Enumerable.Range(1, Sheets), bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(node => node.PageNumber));
    }

    [Fact]
    public void A_link_leads_across_parts()
    {
        using var pdf = PdfDocument.Open(Printed.Value);

        Assert.All(Enumerable.Range(1, Sheets), page =>
            Assert.Contains($"sheet-{Sheets + 1 - page}", Assert.Single(pdf.GetPage(page).GetAnnotations()).AnnotationDictionary.ToString(), StringComparison.Ordinal));
        Assert.Equal(Sheets, Names(pdf).Count);
    }

    [Fact]
    public void The_same_document_gives_the_same_bytes() =>
        Assert.Equal(Printed.Value, Printer.Print(Document, new PrintOptions { Html = false, Workbook = false }).Pdf);

    [Fact]
    public void Parts_of_another_form_are_not_put_together() => Assert.Null(PdfJoin.Of([Printed.Value, "%PDF-1.7 of another kind"u8.ToArray()]));

    private static IReadOnlyDictionary<string, IToken> Names(PdfDocument pdf) =>
        pdf.Structure.GetObject(((IndirectReferenceToken)pdf.Structure.Catalog.CatalogDictionary.Data["Dests"]).Data).Data is DictionaryToken names ? names.Data : new Dictionary<string, IToken>();

    // A letter that no other sheet has, now and then, so that parts have fonts of their own.
    private static Sheet OneOf(int number) => OneSheet(
        new Paragraph([new Text($"this is sheet {number} {(char)('À' + (number / 10))} and leads to "), new Link($"#sheet-{Sheets + 1 - number}", T("another"))])) with
    { Id = $"sheet-{number}", Title = $"Sheet {number}" };
}
