using System.Globalization;

namespace Advance.Paper.Workbook;

/// <summary>Puts right what the library leaves undone in a sheet's XML.</summary>
internal static class SheetXml
{
    private const string Folder = "xl/worksheets/sheet";

    /// <summary>The number of the tab whose part has this name; null for other parts.</summary>
    public static int? NumberOf(string part) =>
        part.StartsWith(Folder, StringComparison.Ordinal) && part.EndsWith(".xml", StringComparison.Ordinal)
            && int.TryParse(part.AsSpan(Folder.Length, part.Length - Folder.Length - 4), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number : null;

    /// <summary>The sheet with its columns in order, empty cells without a kind, and sums with their results.</summary>
    public static string Tidy(string sheet, IEnumerable<WrittenSum> sums)
    {
        var tidy = SortColumns(sheet).Replace(" t=\"s\" />", " />", StringComparison.Ordinal);
        foreach (var sum in sums)
        {
            tidy = WithResult(tidy, sum);
        }

        return tidy;
    }

    private static string SortColumns(string sheet)
    {
        const string open = "<x:cols>", close = "</x:cols>", column = "<x:col ";
        int start = sheet.IndexOf(open, StringComparison.Ordinal), end = sheet.IndexOf(close, StringComparison.Ordinal);
        if (start < 0 || end < start)
        {
            return sheet;
        }

        start += open.Length;
        var columns = sheet[start..end].Split(column, StringSplitOptions.RemoveEmptyEntries);
        var sorted = columns.OrderBy(First).Select(c => column + c);
        return string.Concat(sheet.AsSpan(0, start), string.Concat(sorted), sheet.AsSpan(end));
    }

    private static int First(string column)
    {
        var from = column.IndexOf('"', StringComparison.Ordinal) + 1;
        return int.Parse(column.AsSpan(from, column.IndexOf('"', from) - from), CultureInfo.InvariantCulture);
    }

    private static string WithResult(string sheet, WrittenSum sum)
    {
        const string end = "</x:f>";
        var cell = sheet.IndexOf($" r=\"{sum.Cell}\"", StringComparison.Ordinal);
        var at = cell < 0 ? -1 : sheet.IndexOf(end, cell, StringComparison.Ordinal);
        var amount = sum.Amount.ToString("R", CultureInfo.InvariantCulture);
        return at < 0 ? sheet : sheet.Insert(at + end.Length, $"<x:v>{amount}</x:v>");
    }
}
