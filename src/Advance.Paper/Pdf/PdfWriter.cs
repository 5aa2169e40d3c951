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
        using var stream = new SKDynamicMemoryWStream();
        using (var pdf = SKDocument.CreatePdf(stream, Metadata(document.Info)))
        {
            using var inks = new Inks();
            using var runs = new RunPainter(inks);
            foreach (var page in laid.Pages)
            {
                // The document owns the canvas.
                var canvas = pdf.BeginPage(Mil.ToPt(page.Frame.Width), Mil.ToPt(page.Frame.Height));
                Paint(page, new PagePainter(canvas, inks, runs, laid), laid.Pages.Count);
                pdf.EndPage();
            }

            pdf.Close();
        }

        using var data = stream.DetachAsData();
        return PdfOutline.Add(data.ToArray(), Bookmark.Of(laid), document.Info);
    }

    private static void Paint(Page page, PagePainter painter, int pages)
    {
        if (page.IsFirst)
            painter.PaintName(page.Sheet.Id, 0, 6000);
        painter.Paint(page.Furniture.Head(page.Number, pages), PaperFrame.Left, PaperFrame.Top);
        foreach (var placed in page.Strips)
            painter.Paint(placed.IsRepeated ? placed.Strip.Marks.FindAll(m => m is not AnchorMark) : placed.Strip.Marks, PaperFrame.Left, placed.Y);
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
