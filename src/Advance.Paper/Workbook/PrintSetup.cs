using Advance.Paper.Layout;
using Advance.Paper.Tree;
using ClosedXML.Excel;

namespace Advance.Paper.Workbook;

/// <summary>Sets a tab up so that it prints like its sheet: same paper, its head on each page, as wide as a page.</summary>
internal static class PrintSetup
{
    public static void Apply(IXLWorksheet tab, Sheet sheet, Wording words)
    {
        var setup = tab.PageSetup;
        setup.PaperSize = sheet.Setup.Size switch
        {
            PageSize.A3 => XLPaperSize.A3Paper,
            PageSize.Letter => XLPaperSize.LetterPaper,
            PageSize.Tabloid => XLPaperSize.TabloidPaper,
            _ => XLPaperSize.A4Paper,
        };
        setup.PageOrientation = sheet.Setup.Orientation == Orientation.Landscape ? XLPageOrientation.Landscape : XLPageOrientation.Portrait;
        setup.FitToPages(1, 0);
        setup.SetRowsToRepeatAtTop(1, 1);
        setup.Header.Left.AddText(Code(sheet.Head.Title));
        if (sheet.Head.Lines.Count > 0)
        {
            setup.Header.Center.AddText(Code(FirstWords.Plain(sheet.Head.Lines[0])));
        }

        setup.Header.Right.AddText(Code($"{sheet.Head.Revision} {sheet.Head.Issued}".Trim()));
        setup.Footer.Right.AddText($"{Code(words.Page)} &P {Code(words.Of)} &N");
    }

    /// <summary>A header's text, in which an ampersand begins a code unless doubled.</summary>
    private static string Code(string text)
    {
        var clean = Cells.Clean(text).Replace("&", "&&", StringComparison.Ordinal);
        return clean.Length <= 80 ? clean : clean[..80].TrimEnd('&');
    }
}
