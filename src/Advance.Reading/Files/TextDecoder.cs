using System.Buffers;
using System.Text;
using Advance.Domain.Facts;
using Advance.Domain.Findings;

namespace Advance.Reading.Files;

/// <summary>Turns the bytes of a file into text, or says in one finding why they are none.</summary>
internal static class TextDecoder
{
    private static readonly SearchValues<char> Unusual = SearchValues.Create(MakeUnusual());

    /// <summary>Decodes UTF-8. A byte-order mark is dropped, lines end in a single line feed, and every kind of space becomes the plain one,
    /// so that what was pasted from a mail or a web page is indented by spaces.</summary>
    /// <param name="file">For the marks.</param>
    /// <param name="bytes">The whole file.</param>
    /// <param name="findings">Takes what is wrong.</param>
    /// <returns>The text, or null where it cannot be read at all.</returns>
    public static TextSource? Decode(string file, ReadOnlySpan<byte> bytes, ICollection<Finding> findings)
    {
        if (NotText(file, bytes) is { } finding)
        {
            findings.Add(finding);
            return null;
        }

        var text = Encoding.UTF8.GetString(bytes.StartsWith(Encoding.UTF8.Preamble) ? bytes[3..] : bytes);
        var source = new TextSource(file, text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n'));
        return Clean(source, findings);
    }

    private static Finding? NotText(string file, ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
        {
            return FileFindings.Utf16(file);
        }

        var bad = FirstInvalid(bytes);
        var nul = bytes.IndexOf((byte)0);
        if (bad < 0 && nul < 0)
        {
            return null;
        }

        // A text with one bad byte is worth a place to look at; a picture or a program is not.
        return bad >= 0 && (nul >= 0 || IsMostlyControls(bytes)) ? FileFindings.Binary(file)
            : nul >= 0 ? FileFindings.Nul(Locate(file, bytes[..nul]))
            : FileFindings.NotUtf8(Locate(file, bytes[..bad]), bytes[bad]);
    }

    private static int FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        for (var at = 0; at < bytes.Length;)
        {
            if (Rune.DecodeFromUtf8(bytes[at..], out _, out var used) != OperationStatus.Done)
            {
                return at;
            }

            at += used;
        }

        return -1;
    }

    private static bool IsMostlyControls(ReadOnlySpan<byte> bytes)
    {
        var controls = 0;
        var head = bytes[..Math.Min(bytes.Length, 1024)];
        foreach (var one in head)
        {
            controls += one < 0x20 && one is not ((byte)'\t' or (byte)'\n' or (byte)'\r') ? 1 : 0;
        }

        return controls * 20 > head.Length;
    }

    private static Mark Locate(string file, ReadOnlySpan<byte> before)
    {
        var start = before.LastIndexOf((byte)'\n') + 1;
        return new(file, before.Count((byte)'\n') + 1, Encoding.UTF8.GetCharCount(before[start..]) + 1);
    }

    private static TextSource Clean(TextSource source, ICollection<Finding> findings)
    {
        if (source.Text.AsSpan().IndexOfAny(Unusual) < 0)
        {
            return source;
        }

        var clean = source.Text.ToCharArray();
        for (var at = 0; at < clean.Length; at++)
        {
            if (!Unusual.Contains(clean[at]))
            {
                continue;
            }

            if (!IsSpace(clean[at]))
            {
                findings.Add(FileFindings.Unseen(source.MarkAt(at, 1), clean[at]));
            }

            clean[at] = ' ';
        }

        return new TextSource(source.File, new string(clean));
    }

    private static bool IsSpace(char one) => char.GetUnicodeCategory(one) == System.Globalization.UnicodeCategory.SpaceSeparator;

    // Spaces other than the plain one, and what nobody can see: controls, line separators, zero-width characters, direction marks.
    private static string MakeUnusual()
    {
        var unusual = new StringBuilder("\u0085\u00A0\u00AD\u1680\u2028\u2029\u202F\u205F\u2060\u3000\uFEFF\u007F");
        for (var one = '\u2000'; one <= '\u200F'; one++)
        {
            unusual.Append(one);
        }

        for (var one = '\u0001'; one < ' '; one++)
        {
            unusual.Append(one is '\t' or '\n' ? "" : one.ToString());
        }

        return unusual.ToString();
    }
}
