using System.Buffers;
using System.Globalization;
using System.Text;

namespace Advance.Paper.Pdf;

/// <summary>The objects of a PDF of the plain form that the library writes: one cross-reference table, and no object inside another.</summary>
internal sealed class PdfObjects
{
    private const int EntryLength = 20;

    private readonly byte[] pdf;
    private readonly int[] starts;
    private readonly int[] ends;

    private PdfObjects(byte[] pdf, PdfTrailer trailer, int[] starts)
    {
        (this.pdf, Trailer, this.starts) = (pdf, trailer, starts);
        int[] rising = [.. starts.Where(start => start > 0).Order(), trailer.Start];
        ends = [.. starts.Select(start => start == 0 ? 0 : rising[Array.BinarySearch(rising, start) + 1])];
    }

    /// <summary>What its end says.</summary>
    public PdfTrailer Trailer { get; }

    /// <summary>How many there are, the free one that a table begins with among them.</summary>
    public int Count => starts.Length;

    /// <summary>All bytes before the cross-reference table.</summary>
    public ReadOnlySpan<byte> All => pdf.AsSpan(0, Trailer.Start);

    /// <summary>Reads where they are; null for a PDF of another form.</summary>
    public static PdfObjects? Read(byte[] pdf)
    {
        if (PdfTrailer.Read(pdf) is not { } trailer)
        {
            return null;
        }

        var table = pdf.AsSpan(trailer.Start);
        var head = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"xref\n0 {trailer.Size}\n"));
        if (!table.StartsWith(head) || table.Length < head.Length + (trailer.Size * EntryLength))
        {
            return null;
        }

        var found = new int[trailer.Size];
        for (var number = 1; number < found.Length; number++)
        {
            var entry = table.Slice(head.Length + (number * EntryLength), EntryLength);
            if (entry[17] != 'n' || !int.TryParse(entry[..10], NumberStyles.None, CultureInfo.InvariantCulture, out found[number]))
            {
                return null;
            }
        }

        return new PdfObjects(pdf, trailer, found);
    }

    /// <summary>Where one begins.</summary>
    public int StartOf(int number) => starts[number];

    /// <summary>The dictionary of one.</summary>
    public string DictionaryOf(int number)
    {
        var text = Encoding.Latin1.GetString(Of(number)[..HeadOf(number)]);
        return text[text.IndexOf("<<", StringComparison.Ordinal)..(text.LastIndexOf(">>", StringComparison.Ordinal) + 2)];
    }

    /// <summary>Writes one under another number, with all that it refers to under theirs.</summary>
    /// <param name="number">Which.</param>
    /// <param name="renumbered">The new number of each.</param>
    /// <param name="to">Takes it.</param>
    public void Copy(int number, int[] renumbered, IBufferWriter<byte> to)
    {
        var head = HeadOf(number);
        var text = Encoding.Latin1.GetString(Of(number)[..head]);
        to.Write(Encoding.Latin1.GetBytes(Renumber(text, renumbered)));
        to.Write(Of(number)[head..]);
    }

    /// <summary>A text of PDF with its references under new numbers: <c>12 0 R</c>, and <c>12 0 obj</c> where one begins.</summary>
    /// <remarks>A string in brackets has no place for one: titles are hexadecimal, and addresses have no spaces.</remarks>
    public static string Renumber(string text, int[] renumbered)
    {
        var to = new StringBuilder(text.Length + 16);
        var copied = 0;
        for (var mark = text.IndexOf(" 0 ", StringComparison.Ordinal); mark >= 0; mark = text.IndexOf(" 0 ", mark + 1, StringComparison.Ordinal))
        {
            var start = mark;
            while (start > copied && char.IsAsciiDigit(text[start - 1]))
            {
                start--;
            }

            if (start < mark && text.AsSpan(mark + 3) is ['R', ..] or ['o', 'b', 'j', ..])
            {
                var number = int.Parse(text.AsSpan(start, mark - start), NumberStyles.None, CultureInfo.InvariantCulture);
                to.Append(text, copied, start - copied).Append(CultureInfo.InvariantCulture, $"{renumbered[number]}");
                copied = mark;
            }
        }

        return to.Append(text, copied, text.Length - copied).ToString();
    }

    private ReadOnlySpan<byte> Of(int number) => pdf.AsSpan(starts[number]..ends[number]);

    // What a stream holds refers to nothing by number.
    private int HeadOf(int number)
    {
        var stream = Of(number).IndexOf(">> stream\n"u8);
        return stream < 0 ? Of(number).Length : stream + 2;
    }
}
