namespace Advance.Paper.Pdf;

/// <summary>
/// The canvas writes the day of issue with the time zone of the machine, whatever kind of time it is given. The day has no zone: it is
/// written as UTC, in the same number of bytes, so that no offset in the file moves.
/// </summary>
internal static class PdfDates
{
    private const int DigitCount = 14;

    /// <summary>Changes the zone of every date of the file's own description.</summary>
    public static byte[] WithoutZone(byte[] pdf)
    {
        ReadOnlySpan<byte> start = "Date (D:"u8;
        for (var at = pdf.AsSpan().IndexOf(start); at >= 0;)
        {
            var zone = at + start.Length + DigitCount;
            "+00'00'"u8.CopyTo(pdf.AsSpan(zone));
            var next = pdf.AsSpan(zone).IndexOf(start);
            at = next < 0 ? -1 : zone + next;
        }

        return pdf;
    }
}
