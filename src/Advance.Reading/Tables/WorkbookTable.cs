using System.Globalization;
using System.IO.Compression;
using System.Text;
using Advance.Domain.Facts;
using Advance.Reading.Shapes;
using Advance.Reading.Yaml;
using ExcelDataReader;

namespace Advance.Reading.Tables;

/// <summary>A table in the first sheet of a workbook. Cells come as the texts that would be written for them.</summary>
internal static class WorkbookTable
{
    /// <summary>How many rows are looked at, blank ones among them.</summary>
    public const int MostRows = 20_000;

    /// <summary>How many columns are looked at.</summary>
    public const int MostColumns = 200;

    // A workbook is a zip: it may say that it unfolds to more than it should.
    private const long MostUnfolded = 100_000_000;

    // The library asks for a code page of old workbooks before it has seen that this is a new one.
    static WorkbookTable() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <summary>Reads a workbook; null where it is none or has no headings.</summary>
    /// <param name="file">For the marks, which count rows and columns of cells.</param>
    /// <param name="bytes">The whole file.</param>
    /// <param name="at">Where the file was named, for what is wrong with the file as a whole.</param>
    /// <param name="reader">Takes what is wrong, and the rows to quote.</param>
    public static Grid? Read(string file, ReadOnlyMemory<byte> bytes, Mark at, Reader reader)
    {
        try
        {
            using var stream = new MemoryStream(bytes.ToArray(), writable: false);
            if (Unfolded(stream) > MostUnfolded)
            {
                reader.Fault(TableFindings.WorkbookTooLarge(at, file));
                return null;
            }

            stream.Position = 0;
            using var sheet = ExcelReaderFactory.CreateOpenXmlReader(stream, new ExcelReaderConfiguration { LeaveOpen = true });
            return Read(file, sheet, reader);
        }
        catch (Exception refusal) when (refusal is not (OutOfMemoryException or StackOverflowException))
        {
            // Whatever is wrong inside a workbook, the library says so by exceptions of many kinds.
            reader.Fault(TableFindings.NotAWorkbook(at, file));
            return null;
        }
    }

    private static long Unfolded(Stream stream)
    {
        using var zip = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
        return zip.Entries.Sum(entry => entry.Length);
    }

    private static Grid? Read(string file, IExcelDataReader sheet, Reader reader)
    {
        var rows = new List<IReadOnlyList<CellNode>>();
        var quotes = new WorkbookSource(file);
        reader.Sources.Add(quotes);
        for (var row = 1; sheet.Read(); row++)
        {
            if (row > MostRows)
            {
                reader.Fault(TableFindings.TooManyRows(new(file, row, 1), MostRows));
                break;
            }

            var cells = Cells(file, sheet, row);
            if (cells.Count > 0)
            {
                quotes.Add(row, [.. cells.Select(cell => cell.Text)]);
                rows.Add(cells);
            }
        }

        return rows.Count == 0 ? null : new(rows[0], rows[1..], CountsCells: true);
    }

    // Without the blank cells at the end.
    private static List<CellNode> Cells(string file, IExcelDataReader sheet, int row)
    {
        var cells = new List<CellNode>();
        var count = 0;
        for (var column = 0; column < Math.Min(sheet.FieldCount, MostColumns); column++)
        {
            var cell = new CellNode(Say(sheet.GetValue(column), sheet.GetNumberFormatString(column)), new(file, row, column + 1), ScalarNode.Unmapped);
            cells.Add(cell);
            count = cell.IsBlank ? count : column + 1;
        }

        return cells[..count];
    }

    // A cell that shows 80 % holds 0.8.
    private static string Say(object? value, string? format) => value switch
    {
        null => "",
        double share when format?.Contains('%') == true => (share * 100).ToString("0.#########", CultureInfo.InvariantCulture) + " %",
        double number => number.ToString("0.############", CultureInfo.InvariantCulture),
        DateTime { Year: < 1901 } time => time.ToString("HH:mm", CultureInfo.InvariantCulture),
        DateTime { TimeOfDay.Ticks: 0 } date => date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture),
        DateTime moment => moment.ToString("ddd d MMM yyyy HH:mm", CultureInfo.InvariantCulture),
        TimeSpan time => time.ToString(@"hh\:mm", CultureInfo.InvariantCulture),
        bool yes => yes ? "yes" : "no",
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)?.ReplaceLineEndings(" ").Trim() ?? "",
    };
}
