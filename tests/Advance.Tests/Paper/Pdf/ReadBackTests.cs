using Advance.Paper;
using Advance.Paper.Layout;
using Advance.Paper.Setting;
using Advance.Paper.Tree;
using Advance.Tests.Paper.Examples;
using UglyToad.PdfPig;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Pdf;

/// <summary>The PDF as an independent reader finds it.</summary>
public sealed class ReadBackTests
{
    private static readonly Lazy<byte[]> Printed = new(() => Printer.Print(HarvestSupper.Document, new PrintOptions { Html = false, Workbook = false }).Pdf!);

    [Fact]
    public void Each_letter_stands_where_the_layout_put_it()
    {
        var laid = new Laid(HarvestSupper.Document);
        using var pdf = PdfDocument.Open(Printed.Value);
        foreach (var page in laid.Layout.Pages)
        {
            var letters = pdf.GetPage(page.Number).Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).ToList();
            foreach (var placed in page.Strips)
            {
                foreach (var run in placed.Strip.Marks.OfType<RunMark>().Where(r => r.Turn == 0))
                {
                    foreach (var word in run.Words)
                    {
                        var x = Mil.ToPt(PaperFrame.Left + run.X + word.X);
                        var y = Mil.ToPt(page.Frame.Height - placed.Y - run.Baseline);
                        var isThere = letters.Exists(l => Math.Abs(l.StartBaseLine.X - x) < 0.1 && Math.Abs(l.StartBaseLine.Y - y) < 0.1
                            && word.Word.Text.StartsWith(l.Value, StringComparison.Ordinal));
                        Assert.True(isThere, $"{word.Word.Text} at {x} {y} on page {page.Number}, near: {string.Join("; ", letters.Where(l => l.Value[0] == word.Word.Text[0]).OrderBy(l => Math.Abs(l.StartBaseLine.X - x) + Math.Abs(l.StartBaseLine.Y - y)).Take(2).Select(l => $"{l.StartBaseLine.X} {l.StartBaseLine.Y}"))}");
                    }
                }
            }
        }
    }

    [Fact]
    public void Text_is_complete_digits_included()
    {
        var laid = new Laid(HarvestSupper.Document);
        using var pdf = PdfDocument.Open(Printed.Value);
        foreach (var page in laid.Layout.Pages)
        {
            var read = Letters(string.Concat(pdf.GetPage(page.Number).Letters.Select(l => l.Value)));
            var written = page.Strips.SelectMany(s => s.Strip.Marks)
                .Concat(page.Furniture.Head(page.Number, laid.Layout.Pages.Count)).Concat(page.Furniture.Foot)
                .SelectMany(m => m is PictureMark picture ? picture.Picture.Marks : [m])
                .OfType<RunMark>().SelectMany(r => r.Words).Select(w => w.Word.Text);
            Assert.Equal(Letters(string.Concat(written)), read);
        }
    }

    [Fact]
    public void It_says_what_it_is()
    {
        using var pdf = PdfDocument.Open(Printed.Value);
        Assert.Equal("Harvest Supper", pdf.Information.Title);
        Assert.Equal("Lower Mill Sound & Light", pdf.Information.Author);
        Assert.Contains("20260901", pdf.Information.CreationDate, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_sheet_and_each_named_heading_has_a_bookmark()
    {
        var sheet = OneSheet(new Heading(1, T("Circuits")) { Id = "c" }, new Heading(2, T("not this one")) { Id = "d" }) with { Title = "Größe & (Maß)" };
        using var pdf = Open(Doc(sheet));
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(["Größe & (Maß)", "Circuits"], bookmarks.GetNodes().Select(n => n.Title));
    }

    [Fact]
    public void Links_lead_to_their_place_and_to_the_web()
    {
        using var pdf = Open(Doc(
            OneSheet(new Paragraph([new Link("#far", T("the far one")), new Text(" and "), new Link("https://example.org/a?b=ä", T("the web"))])),
            OneSheet(new Paragraph(T("here")) { Id = "far" }) with { Id = "t" }));
        var links = pdf.GetPage(1).GetAnnotations().ToList();
        Assert.Equal(2, links.Count);
        Assert.Contains(links, l => l.AnnotationDictionary.ToString().Contains("https://example.org/a?b=%C3%A4", StringComparison.Ordinal));
        Assert.Contains(links, l => l.AnnotationDictionary.ToString().Contains("far", StringComparison.Ordinal));
    }

    [Fact]
    public void The_page_of_a_place_is_printed()
    {
        using var pdf = Open(Doc(
            OneSheet(new Paragraph([new Text("workings: page "), new PageOf("far")])),
            OneSheet(new PageBreak(), new Paragraph(T("x")), new PageBreak(), new Paragraph(T("here")) { Id = "far" }) with { Id = "t" }));
        Assert.Contains("page 3", string.Join(' ', pdf.GetPage(1).GetWords().Select(w => w.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_document_gives_the_same_bytes_in_any_culture()
    {
        var before = Thread.CurrentThread.CurrentCulture;
        var odd = (System.Globalization.CultureInfo)System.Globalization.CultureInfo.InvariantCulture.Clone();
        (odd.NumberFormat.NumberDecimalSeparator, odd.NumberFormat.NegativeSign, odd.DateTimeFormat.DateSeparator) = (",", "~", "|");
        try
        {
            Thread.CurrentThread.CurrentCulture = odd;
            Assert.Equal(Printed.Value, Printer.Print(HarvestSupper.Document, new PrintOptions { Html = false, Workbook = false }).Pdf);
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    [Fact]
    public void The_clock_leaves_no_trace()
    {
        var undated = HarvestSupper.Document with { Info = new DocumentInfo("x") };
        using var pdf = PdfDocument.Open(Printer.Print(undated, new PrintOptions { Html = false, Workbook = false }).Pdf!);
        Assert.Null(pdf.Information.CreationDate);
        Assert.Null(pdf.Information.ModifiedDate);
    }

    [Fact]
    public void Pages_are_numbered_as_they_are_printed()
    {
        using var pdf = PdfDocument.Open(Printed.Value);
        Assert.True(pdf.Structure.Catalog.CatalogDictionary.Data.ContainsKey("PageLabels"));
        for (var page = 1; page <= pdf.NumberOfPages; page++)
        {
            var words = string.Join(' ', pdf.GetPage(page).GetWords().Select(w => w.Text));
            Assert.Contains($"page {page} of {pdf.NumberOfPages}", words, StringComparison.Ordinal);
        }
    }

    private static PdfDocument Open(Document document) => PdfDocument.Open(Printer.Print(document, new PrintOptions { Html = false, Workbook = false }).Pdf!);

    private static string Letters(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)).Order());
}

