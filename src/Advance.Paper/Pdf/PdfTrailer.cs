using System.Globalization;
using System.Text;

namespace Advance.Paper.Pdf;

/// <summary>What an incremental update needs to know of the PDF before it.</summary>
/// <param name="Start">Where its cross-reference table begins.</param>
/// <param name="Size">One more than its highest object number.</param>
/// <param name="Root">Object number of the catalogue.</param>
/// <param name="Catalog">The catalogue's dictionary.</param>
/// <param name="Info">The trailer's entry for the document information, with a line end; may be empty.</param>
internal sealed record PdfTrailer(int Start, int Size, int Root, string Catalog, string Info)
{
    /// <summary>Reads the end of a PDF; null when it is not of the plain form with one cross-reference table.</summary>
    public static PdfTrailer? Read(byte[] pdf)
    {
        // Latin-1 keeps a byte a letter, so that places in the text are places in the file.
        var tail = Encoding.Latin1.GetString(pdf, Math.Max(0, pdf.Length - 2048), Math.Min(2048, pdf.Length));
        var trailer = tail.LastIndexOf("trailer", StringComparison.Ordinal);
        var startxref = tail.LastIndexOf("startxref", StringComparison.Ordinal);
        if (trailer < 0 || startxref < trailer)
        {
            return null;
        }

        var dictionary = tail[trailer..startxref];
        if (Number(tail, startxref + 9) is not { } start
            || Number(dictionary, After(dictionary, "/Size")) is not { } size
            || Number(dictionary, After(dictionary, "/Root")) is not { } root
            || Object(pdf, start, root) is not { } catalog)
        {
            return null;
        }

        var info = Number(dictionary, After(dictionary, "/Info")) is { } number ? $"/Info {number} 0 R\n" : "";
        return new PdfTrailer(start, size, root, catalog, info + Id(dictionary));
    }

    private static string Id(string dictionary)
    {
        var at = dictionary.IndexOf("/ID", StringComparison.Ordinal);
        var end = at < 0 ? -1 : dictionary.IndexOf(']', at);
        return end < 0 ? "" : dictionary[at..(end + 1)] + "\n";
    }

    private static int After(string text, string key)
    {
        var at = text.IndexOf(key, StringComparison.Ordinal);
        return at < 0 ? text.Length : at + key.Length;
    }

    private static int? Number(string text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
        {
            at++;
        }

        var end = at;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            end++;
        }

        return int.TryParse(text.AsSpan(at, end - at), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    /// <summary>The dictionary of an object, found by the cross-reference table's one section.</summary>
    private static string? Object(byte[] pdf, int table, int number)
    {
        const int entry = 20;
        var head = Encoding.Latin1.GetString(pdf, table, Math.Min(40, pdf.Length - table));
        var lines = head.Split('\n');
        if (lines.Length < 2 || !lines[0].StartsWith("xref", StringComparison.Ordinal))
        {
            return null;
        }

        var entries = table + lines[0].Length + lines[1].Length + 2;
        var line = Encoding.Latin1.GetString(pdf, entries + (number * entry), 10);
        if (Number(line, 0) is not { } offset)
        {
            return null;
        }

        var end = pdf.AsSpan(offset).IndexOf("endobj"u8);
        var text = Encoding.Latin1.GetString(pdf, offset, end);
        var begin = text.IndexOf("<<", StringComparison.Ordinal);
        return begin < 0 ? null : text[begin..].TrimEnd();
    }
}
