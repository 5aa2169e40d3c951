using System.Buffers.Binary;
using System.Text;

namespace Advance.Paper.Setting;

/// <summary>
/// Makes a TrueType font small: glyphs that are not used lose their outlines, and tables that a PDF has no use for are left out. Numbers
/// of glyphs stay as they are, so that what was shaped with the whole font is drawn right with the small one. Its table of letters is
/// written anew, see <see cref="LetterMap"/>.
/// </summary>
internal static class TrimmedFont
{
    private static readonly HashSet<string> Kept =
        new(StringComparer.Ordinal) { "OS/2", "cmap", "cvt ", "fpgm", "glyf", "head", "hhea", "hmtx", "loca", "maxp", "name", "post", "prep" };

    /// <summary>The font with the outlines of the used glyphs only; the font itself when it has none that are known how to be trimmed.</summary>
    /// <param name="font">A whole TrueType file.</param>
    /// <param name="used">For each glyph that is drawn its letter; 0 for one that has none.</param>
    public static byte[] Of(byte[] font, IReadOnlyDictionary<ushort, int> used)
    {
        var tables = Tables(font);
        if (!tables.ContainsKey("glyf") || !tables.ContainsKey("loca") || !tables.ContainsKey("head") || !tables.ContainsKey("maxp"))
        {
            return font;
        }

        var outlines = new GlyphOutlines(font, tables);
        var (glyf, loca) = outlines.Keep(used.Keys);
        var parts = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var (tag, range) in tables)
        {
            if (Kept.Contains(tag))
            {
                parts[tag] = font.AsSpan(range.Start, range.Length).ToArray();
            }
        }

        parts["glyf"] = glyf;
        parts["loca"] = loca;
        parts["cmap"] = LetterMap.Of(used.Where(u => u.Value > 0).Select(u => (u.Value, u.Key)));
        // Long offsets in loca, whatever there was before.
        BinaryPrimitives.WriteInt16BigEndian(parts["head"].AsSpan(50), 1);
        parts["post"] = WithoutNames(parts["post"]);
        return Write(parts);
    }

    /// <summary>Where each table of a font lies.</summary>
    public static Dictionary<string, (int Start, int Length)> Tables(ReadOnlySpan<byte> font)
    {
        var tables = new Dictionary<string, (int Start, int Length)>(StringComparer.Ordinal);
        if (font.Length < 12 || BinaryPrimitives.ReadUInt32BigEndian(font) is not (0x00010000 or 0x74727565))
        {
            return tables;
        }

        var count = BinaryPrimitives.ReadUInt16BigEndian(font[4..]);
        for (var i = 0; i < count && 28 + (i * 16) <= font.Length; i++)
        {
            var record = font.Slice(12 + (i * 16), 16);
            long start = BinaryPrimitives.ReadUInt32BigEndian(record[8..]), length = BinaryPrimitives.ReadUInt32BigEndian(record[12..]);
            if (start + length <= font.Length)
            {
                tables[Encoding.ASCII.GetString(record[..4])] = ((int)start, (int)length);
            }
        }

        return tables;
    }

    /// <summary>The table in its third version, which has no names of glyphs.</summary>
    private static byte[] WithoutNames(byte[] post)
    {
        var plain = post.AsSpan(0, Math.Min(32, post.Length)).ToArray();
        BinaryPrimitives.WriteUInt32BigEndian(plain, 0x00030000);
        return plain;
    }

    private static byte[] Write(SortedDictionary<string, byte[]> parts)
    {
        var head = 12 + (parts.Count * 16);
        var size = head + parts.Values.Sum(p => Padded(p.Length));
        var font = new byte[size];
        BinaryPrimitives.WriteUInt32BigEndian(font, 0x00010000);
        BinaryPrimitives.WriteUInt16BigEndian(font.AsSpan(4), (ushort)parts.Count);
        var power = System.Numerics.BitOperations.Log2((uint)parts.Count);
        BinaryPrimitives.WriteUInt16BigEndian(font.AsSpan(6), (ushort)(16 << power));
        BinaryPrimitives.WriteUInt16BigEndian(font.AsSpan(8), (ushort)power);
        BinaryPrimitives.WriteUInt16BigEndian(font.AsSpan(10), (ushort)((parts.Count * 16) - (16 << power)));
        var (record, at) = (12, head);
        foreach (var (tag, data) in parts)
        {
            Encoding.ASCII.GetBytes(tag, font.AsSpan(record));
            data.CopyTo(font, at);
            BinaryPrimitives.WriteUInt32BigEndian(font.AsSpan(record + 4), Sum(font.AsSpan(at, Padded(data.Length))));
            BinaryPrimitives.WriteUInt32BigEndian(font.AsSpan(record + 8), (uint)at);
            BinaryPrimitives.WriteUInt32BigEndian(font.AsSpan(record + 12), (uint)data.Length);
            record += 16;
            at += Padded(data.Length);
        }

        return font;
    }

    private static int Padded(int length) => (length + 3) & ~3;

    private static uint Sum(ReadOnlySpan<byte> table)
    {
        var sum = 0u;
        for (var i = 0; i < table.Length; i += 4)
        {
            sum += BinaryPrimitives.ReadUInt32BigEndian(table[i..]);
        }

        return sum;
    }
}
