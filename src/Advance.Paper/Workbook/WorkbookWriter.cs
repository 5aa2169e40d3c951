using Advance.Paper.Layout;
using Advance.Paper.Tree;
using ClosedXML.Excel;

namespace Advance.Paper.Workbook;

/// <summary>Writes the tables of a document as a workbook, each on a sheet of its own. The only place that knows the library.</summary>
internal static class WorkbookWriter
{
    // A workbook has to say some day; this is the first one that its zip format knows.
    private static readonly DateTime NoDay = new(1980, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    public static byte[] Write(Document document, Wording words, Faults faults)
    {
        using var book = new XLWorkbook(XLEventTracking.Disabled);
        var day = document.Info.Issued?.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc) ?? NoDay;
        Describe(book, document.Info, day);
        var names = new TabNames();
        var sums = new List<WrittenSum>();
        foreach (var sheet in document.Sheets)
        {
            faults.Sheet = sheet.Id;
            foreach (var table in Tables.In(sheet.Blocks))
            {
                faults.Place = table.Id ?? FirstWords.Of(table);
                var tab = book.Worksheets.Add(names.Next(sheet.Title, FirstWords.Plain(table.Caption)));
                new TableTab(tab, table, words, faults, sums).Write();
                PrintSetup.Apply(tab, sheet, words);
            }
        }

        (faults.Sheet, faults.Place) = ("", "");
        if (book.Worksheets.Count == 0)
        {
            Cells.SetText(book.Worksheets.Add(names.Next(document.Info.Title, "")).Cell(1, 1), document.Info.Title);
        }

        using var stream = new MemoryStream();
        book.SaveAs(stream, validate: false, evaluateFormulae: false);
        return PlainZip.Normalise(stream.ToArray(), day, sums);
    }

    private static void Describe(XLWorkbook book, DocumentInfo info, DateTime day)
    {
        book.Properties.Title = Cells.Clean(info.Title);
        book.Properties.Author = Cells.Clean(info.Author);
        book.Properties.Subject = Cells.Clean(info.Subject);
        book.Properties.Keywords = Cells.Clean(info.Keywords);
        book.Properties.LastModifiedBy = "";
        book.Properties.Created = day;
        book.Properties.Modified = day;
        book.Style.Font.FontName = "Arial";
        book.Style.Font.FontSize = 10;
    }
}
