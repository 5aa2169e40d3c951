using System.Globalization;
using System.Text;
using Advance.Paper.Tree;

namespace Advance.Paper.Pdf;

/// <summary>
/// Adds what the PDF library leaves out, as an incremental update after its bytes: the outline, page labels, the language, and that the
/// title be shown. Leads by the named destinations that the pages already carry.
/// </summary>
internal sealed class PdfOutline
{
    private readonly byte[] source;
    private readonly List<(int Number, int Offset)> written = [];
    private readonly StringBuilder added = new();
    private int next;

    private PdfOutline(byte[] source, int next)
    {
        this.source = source;
        this.next = next;
    }

    /// <summary>The PDF with the additions; unchanged when it has not the plain form that the library writes.</summary>
    public static byte[] Add(byte[] pdf, List<Bookmark> bookmarks, DocumentInfo info)
    {
        if (PdfTrailer.Read(pdf) is not { } trailer)
        {
            return pdf;
        }

        var outline = new PdfOutline(pdf, trailer.Size);
        var root = outline.Reserve();
        outline.WriteLevel(bookmarks, root, out var first, out var last, out var count);
        var list = bookmarks.Count == 0 ? "" : $"/Outlines {root} 0 R\n/PageMode /UseOutlines\n";
        outline.Write(root, bookmarks.Count == 0 ? "<</Type /Outlines>>" : $"<</Type /Outlines\n/First {first} 0 R\n/Last {last} 0 R\n/Count {count}>>");
        var extras = list
            + "/PageLabels <</Nums [0 <</S /D>>]>>\n"
            + $"/Lang {Literal(info.Language)}\n"
            + (trailer.Catalog.Contains("/ViewerPreferences", StringComparison.Ordinal) ? "" : "/ViewerPreferences <</DisplayDocTitle true>>\n");
        outline.Write(trailer.Root, trailer.Catalog.Insert(trailer.Catalog.LastIndexOf(">>", StringComparison.Ordinal), "\n" + extras));
        return outline.Finish(trailer);
    }

    private int Reserve() => next++;

    private void WriteLevel(List<Bookmark> level, int parent, out int first, out int last, out int count)
    {
        (first, count) = (next, level.Count);
        last = next + Math.Max(0, level.Count - 1);
        var numbers = level.Select(_ => Reserve()).ToList();
        for (var i = 0; i < level.Count; i++)
        {
            var item = new StringBuilder();
            item.Append(CultureInfo.InvariantCulture, $"<</Title {Literal(level[i].Title)}\n/Parent {parent} 0 R\n");
            if (i > 0)
            {
                item.Append(CultureInfo.InvariantCulture, $"/Prev {numbers[i - 1]} 0 R\n");
            }

            if (i + 1 < level.Count)
            {
                item.Append(CultureInfo.InvariantCulture, $"/Next {numbers[i + 1]} 0 R\n");
            }

            if (level[i].Children.Count > 0)
            {
                WriteLevel(level[i].Children, numbers[i], out var child, out var lastChild, out var children);
                // A negative count: closed until somebody opens it.
                item.Append(CultureInfo.InvariantCulture, $"/First {child} 0 R\n/Last {lastChild} 0 R\n/Count {-children}\n");
            }

            item.Append(CultureInfo.InvariantCulture, $"/Dest /{PdfNames.Of(level[i].Id)}>>");
            Write(numbers[i], item.ToString());
        }
    }

    private void Write(int number, string body)
    {
        written.Add((number, source.Length + added.Length));
        added.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n{body}\nendobj\n");
    }

    private byte[] Finish(PdfTrailer trailer)
    {
        var start = source.Length + added.Length;
        added.Append("xref\n");
        foreach (var (number, offset) in written.OrderBy(w => w.Number))
        {
            added.Append(CultureInfo.InvariantCulture, $"{number} 1\n{offset:D10} 00000 n \n");
        }

        added.Append(CultureInfo.InvariantCulture, $"trailer\n<</Size {next}\n/Root {trailer.Root} 0 R\n{trailer.Info}/Prev {trailer.Start}>>\n");
        added.Append(CultureInfo.InvariantCulture, $"startxref\n{start}\n%%EOF\n");
        return [.. source, .. Encoding.Latin1.GetBytes(added.ToString())];
    }

    /// <summary>A text string in UTF-16 as hexadecimal: no letter of it means anything to a reader of PDF.</summary>
    private static string Literal(string text) =>
        "<FEFF" + Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text)) + ">";
}
