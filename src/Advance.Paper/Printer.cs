using Advance.Paper.Html;
using Advance.Paper.Layout;
using Advance.Paper.Pdf;
using Advance.Paper.Setting;
using Advance.Paper.Tree;
using Advance.Paper.Workbook;

namespace Advance.Paper;

/// <summary>The door: a document in, files out. The same document and options give the same bytes, run after run.</summary>
public static class Printer
{
    /// <summary>Prints a document. Nothing in a document throws; what cannot be printed as it stands is told in the faults.</summary>
    /// <param name="document">What is printed.</param>
    /// <param name="options">What is made of it; null for all three files with the built-in font.</param>
    public static Printing Print(Document document, PrintOptions? options = null)
    {
        options ??= new PrintOptions();
        var bookFaults = new Faults();
        // The workbook needs no layout, and its library is slow to wake up: it runs beside the rest.
        var book = options.Workbook ? Task.Run(() => WorkbookWriter.Write(document, options.Words, bookFaults)) : null;
        var faults = new Faults();
        string? html = null;
        byte[]? pdf = null;
        var pages = 0;
        var laid = options.Pdf || options.Html ? DocumentLayout.LayOut(document, FaceSet.Of(options.Fonts, faults), options.Words, faults) : null;
        options.WhenLaidOut?.Invoke();
        if (laid is not null)
        {
            pages = laid.Pages.Count;
            // The page only reads what was laid out. The PDF shapes the numbers of its pages too, with shapers that the page has no part in.
            var page = options.Html ? Task.Run(() => HtmlWriter.Write(document, laid, options)) : null;
            pdf = options.Pdf ? PdfWriter.Write(document, laid) : null;
            html = page?.GetAwaiter().GetResult();
        }

        var workbook = book?.GetAwaiter().GetResult();
        faults.AddRange(bookFaults.All);
        return new Printing(faults.All, pages) { Pdf = pdf, Html = html, Workbook = workbook };
    }
}
