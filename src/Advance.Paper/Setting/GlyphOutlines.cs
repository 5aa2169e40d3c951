using System.Buffers.Binary;

namespace Advance.Paper.Setting;

/// <summary>The outlines of a TrueType font.</summary>
internal sealed class GlyphOutlines
{
    private const int ArgumentsAreWords = 1;
    private const int HasScale = 8;
    private const int MoreComponents = 32;
    private const int HasTwoScales = 64;
    private const int HasMatrix = 128;

    private readonly byte[] font;
    private readonly int glyf;
    private readonly int glyfLength;
    private readonly int loca;
    private readonly bool isLong;
    private readonly int count;

    public GlyphOutlines(byte[] font, Dictionary<string, (int Start, int Length)> tables)
    {
        this.font = font;
        (glyf, glyfLength) = tables["glyf"];
        loca = tables["loca"].Start;
        isLong = BinaryPrimitives.ReadInt16BigEndian(font.AsSpan(tables["head"].Start + 50)) != 0;
        var inMaxp = BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(tables["maxp"].Start + 4));
        count = Math.Min(inMaxp, (tables["loca"].Length / (isLong ? 4 : 2)) - 1);
    }

    /// <summary>New tables glyf and loca, in which only the used glyphs, and those that they are made of, have outlines.</summary>
    public (byte[] Glyf, byte[] Loca) Keep(IEnumerable<ushort> used)
    {
        var kept = new HashSet<int> { 0 };
        var open = new Stack<int>(used.Select(g => (int)g));
        while (open.TryPop(out var glyph))
        {
            if (kept.Add(glyph))
            {
                foreach (var part in Components(glyph))
                {
                    open.Push(part);
                }
            }
        }

        using var outlines = new MemoryStream();
        var offsets = new byte[(count + 1) * 4];
        for (var glyph = 0; glyph < count; glyph++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(offsets.AsSpan(glyph * 4), (uint)outlines.Length);
            if (kept.Contains(glyph))
            {
                outlines.Write(Outline(glyph));
            }

            while (outlines.Length % 4 != 0)
            {
                outlines.WriteByte(0);
            }
        }

        BinaryPrimitives.WriteUInt32BigEndian(offsets.AsSpan(count * 4), (uint)outlines.Length);
        return (outlines.ToArray(), offsets);
    }

    private ReadOnlySpan<byte> Outline(int glyph)
    {
        if (glyph >= count)
        {
            return [];
        }

        long start = Offset(glyph), end = Offset(glyph + 1);
        return end <= start || end > glyfLength ? [] : font.AsSpan(glyf + (int)start, (int)(end - start));
    }

    private long Offset(int glyph) => isLong
        ? BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(loca + (glyph * 4)))
        : BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(loca + (glyph * 2))) * 2L;

    /// <summary>The glyphs that a composite one, as an accented letter, is made of.</summary>
    private List<int> Components(int glyph)
    {
        var parts = new List<int>();
        var outline = Outline(glyph);
        if (outline.Length < 10 || BinaryPrimitives.ReadInt16BigEndian(outline) >= 0)
        {
            return parts;
        }

        for (var at = 10; at + 4 <= outline.Length;)
        {
            var flags = BinaryPrimitives.ReadUInt16BigEndian(outline[at..]);
            parts.Add(BinaryPrimitives.ReadUInt16BigEndian(outline[(at + 2)..]));
            at += 4 + ((flags & ArgumentsAreWords) != 0 ? 4 : 2);
            at += (flags & HasScale) != 0 ? 2 : (flags & HasTwoScales) != 0 ? 4 : (flags & HasMatrix) != 0 ? 8 : 0;
            if ((flags & MoreComponents) == 0)
            {
                break;
            }
        }

        return parts;
    }
}
