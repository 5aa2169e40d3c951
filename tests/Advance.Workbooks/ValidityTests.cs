using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;

namespace Advance.Workbooks;

[Collection(BooksCollection.Name)]
public sealed class ValidityTests(PrintedBooks books)
{
    [Fact]
    public void Each_workbook_is_valid()
    {
        Assert.Equal(["blocks.xlsx", "harvest-supper.xlsx", "horrors.xlsx"], books.All.Select(Path.GetFileName));
        foreach (var path in books.All)
        {
            using var book = SpreadsheetDocument.Open(path, isEditable: false);
            var errors = new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(book);
            Assert.Empty(errors.Select(e => $"{Path.GetFileName(path)} {e.Part?.Uri} {e.Path?.XPath}: {e.Description}").Take(5));
        }
    }

    [Fact]
    public void Columns_are_told_in_their_order()
    {
        foreach (var path in books.All)
        {
            using var book = SpreadsheetDocument.Open(path, isEditable: false);
            foreach (var part in book.WorkbookPart!.WorksheetParts)
            {
                var starts = part.Worksheet!.Descendants<Column>().Select(c => c.Min!.Value).ToList();
                Assert.Equal(starts.Order(), starts);
            }
        }
    }

    [Fact]
    public void All_that_is_told_of_a_cell_is_there()
    {
        foreach (var path in books.All)
        {
            using var book = SpreadsheetDocument.Open(path, isEditable: false);
            foreach (var cell in book.WorkbookPart!.WorksheetParts.SelectMany(p => p.Worksheet!.Descendants<Cell>()))
            {
                Assert.True(cell.DataType?.Value != CellValues.SharedString || cell.CellValue is not null, $"{Path.GetFileName(path)} {cell.CellReference}");
            }
        }
    }
}
