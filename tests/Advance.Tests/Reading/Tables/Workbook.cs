using System.IO.Compression;
using System.Text;

namespace Advance.Tests.Reading.Tables;

/// <summary>The least workbook that a reader takes, written by hand.</summary>
internal static class Workbook
{
    /// <summary>Cells are texts, numbers, or a number with the number of a built-in format.</summary>
    public static byte[] Of(params object?[][] rows)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            Write(zip, "[Content_Types].xml", """<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/><Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/></Types>""");
            Write(zip, "_rels/.rels", """<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>""");
            Write(zip, "xl/workbook.xml", """<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="Kinds" sheetId="1" r:id="r1"/></sheets></workbook>""");
            Write(zip, "xl/_rels/workbook.xml.rels", """<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="r2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>""");
            Write(zip, "xl/styles.xml", """<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><cellXfs count="4"><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/><xf numFmtId="20" applyNumberFormat="1"/><xf numFmtId="9" applyNumberFormat="1"/></cellXfs></styleSheet>""");
            Write(zip, "xl/worksheets/sheet1.xml", Sheet(rows));
        }

        return stream.ToArray();
    }

    private static string Sheet(object?[][] rows)
    {
        var xml = new StringBuilder("""<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>""");
        for (var row = 0; row < rows.Length; row++)
        {
            xml.Append($"<row r=\"{row + 1}\">");
            for (var column = 0; column < rows[row].Length; column++)
            {
                xml.Append(Cell($"{(char)('A' + column)}{row + 1}", rows[row][column]));
            }

            xml.Append("</row>");
        }

        return xml.Append("</sheetData></worksheet>").ToString();
    }

    private static string Cell(string place, object? value) => value switch
    {
        null => "",
        string text => $"<c r=\"{place}\" t=\"inlineStr\"><is><t>{System.Security.SecurityElement.Escape(text)}</t></is></c>",
        DateOnly date => $"<c r=\"{place}\" s=\"1\"><v>{date.DayNumber - new DateOnly(1899, 12, 30).DayNumber}</v></c>",
        TimeOnly time => FormattableString.Invariant($"<c r=\"{place}\" s=\"2\"><v>{time.ToTimeSpan().TotalDays}</v></c>"),
        decimal percent => FormattableString.Invariant($"<c r=\"{place}\" s=\"3\"><v>{percent}</v></c>"),
        _ => FormattableString.Invariant($"<c r=\"{place}\"><v>{value}</v></c>"),
    };

    private static void Write(ZipArchive zip, string name, string xml)
    {
        using var writer = new StreamWriter(zip.CreateEntry(name).Open());
        writer.Write(xml);
    }
}
