using Advance.Paper.Layout;
using Advance.Paper.Setting;
using Advance.Paper.Tree;
using SkiaSharp;

namespace Advance.Paper.Pdf;

/// <summary>Writes pages as a PDF.</summary>
internal static class PdfWriter
{
    public static byte[] Write(Document document, DocumentLayout laid)
    {
        var heads = laid.Pages.Select(p => p.Furniture.Head(p.Number, laid.Pages.Count)).ToList();
        using var stream = new SKDynamicMemoryWStream();
        using (var pdf = SKDocument.CreatePdf(stream, Metadata(document.Info)))
        {
            using var inks = new Inks(Used(laid, heads));
            using var runs = new RunPainter(inks);
            var named = new HashSet<string>(StringComparer.Ordinal);
            for (var i = 0; i < heads.Count; i++)
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
        return PdfOutline.Add(PdfDates.WithoutZone(data.ToArray()), Bookmark.Of(laid), document.Info);
    }

    private static UsedGlyphs Used(DocumentLayout laid, List<List<Mark>> heads)
    {
        var used = new UsedGlyphs();
        // Numbers of pages are only put in when they are painted.
        foreach (var digit in "0123456789?")
        {
            for (var weight = 0; weight < 2; weight++)
            {
                used.Add(laid.Shaper.Shape([digit], weight == 1));
            }
        }

        foreach (var head in heads)
        {
            used.Add(head);
        }

        foreach (var page in laid.Pages)
        {
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
