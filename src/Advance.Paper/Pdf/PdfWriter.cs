using Advance.Paper.Layout;
using Advance.Paper.Setting;
using Advance.Paper.Tree;
using SkiaSharp;

namespace Advance.Paper.Pdf;

/// <summary>Writes pages as a PDF: parts of it side by side, as the library packs one page after the other.</summary>
internal static class PdfWriter
{
    // By pages and not by processors, so that every machine writes the same bytes. Each part brings its own fonts, so parts are not small.
    private const int PagesOfPart = 70;

    public static byte[] Write(Document document, DocumentLayout laid)
    {
        var heads = laid.Pages.Select(p => p.Furniture.Head(p.Number, laid.Pages.Count)).ToList();
        var parts = Math.Max(1, (heads.Count + PagesOfPart - 1) / PagesOfPart);
        var written = new byte[parts][];
        Parallel.For(0, parts, part => written[part] = WritePart(document, laid, heads, heads.Count * part / parts, heads.Count * (part + 1) / parts));
        var whole = PdfJoin.Of(written) ?? WritePart(document, laid, heads, 0, heads.Count);
        return PdfOutline.Add(PdfDates.WithoutZone(whole), Bookmark.Of(laid), document.Info);
    }

    private static byte[] WritePart(Document document, DocumentLayout laid, List<List<Mark>> heads, int from, int to)
    {
        using var stream = new SKDynamicMemoryWStream();
        using (var pdf = SKDocument.CreatePdf(stream, Metadata(document.Info)))
        {
            using var inks = new Inks(Used(laid, heads, from, to));
            using var runs = new RunPainter(inks);
            var named = new HashSet<string>(StringComparer.Ordinal);
            for (var i = from; i < to; i++)
            {
                var page = laid.Pages[i];
                // The document owns the canvas.
                var canvas = pdf.BeginPage(Mil.ToPt(page.Frame.Width), Mil.ToPt(page.Frame.Height));
                Paint(page, heads[i], new PagePainter(canvas, inks, runs, laid, named));
                pdf.EndPage();
            }

            pdf.Close();
        }

        using var data = stream.DetachAsData();
        return data.ToArray();
    }

    private static UsedGlyphs Used(DocumentLayout laid, List<List<Mark>> heads, int from, int to)
    {
        var used = new UsedGlyphs();
        // Numbers of pages are only put in when they are painted.
        foreach (var digit in "0123456789?")
        {
            for (var weight = 0; weight < 2; weight++)
            {
                used.Add(laid.NumberShaped([digit], weight == 1));
            }
        }

        for (var i = from; i < to; i++)
        {
            var page = laid.Pages[i];
            used.Add(heads[i]);
            used.Add(page.Furniture.Foot);
            foreach (var placed in page.Strips)
            {
                used.Add(placed.Strip.Marks);
            }
        }

        return used;
    }

    private static void Paint(Page page, List<Mark> head, PagePainter painter)
    {
        if (page.IsFirst)
        {
            painter.PaintName(page.Sheet.Id, 0, 6000);
        }

        painter.Paint(head, PaperFrame.Left, PaperFrame.Top);
        foreach (var placed in page.Strips)
        {
            painter.Paint(placed.Strip.Marks, PaperFrame.Left, placed.Y);
        }

        painter.Paint(page.Furniture.Foot, PaperFrame.Left, page.Frame.InnerBottom - page.Furniture.FootHeight);
    }

    private static SKDocumentPdfMetadata Metadata(DocumentInfo info)
    {
        var day = info.Issued?.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        return new SKDocumentPdfMetadata
        {
            Title = info.Title,
            Author = info.Author,
            Subject = info.Subject,
            Keywords = info.Keywords,
            Creator = "advance",
            Producer = "Advance.Paper",
            Creation = day,
            Modified = day,
            RasterDpi = SKDocumentPdfMetadata.DefaultRasterDpi,
            EncodingQuality = SKDocumentPdfMetadata.DefaultEncodingQuality,
        };
    }
}
