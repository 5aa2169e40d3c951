using System.Buffers.Binary;

namespace Advance.Paper.Setting;

/// <summary>
/// Writes the table of letters of a font. A PDF tells which letter a glyph is by its font's table, and tabular figures stand in none: a
/// font that is to be drawn with gets a table in which each glyph that was drawn has the letter that it stood for.
/// </summary>
internal static class LetterMap
{
    private const int Head = 12;
    private const int GroupsHead = 16;
    private const int Group = 12;

    /// <summary>The table <c>cmap</c> with one part in the form of 32-bit groups.</summary>
    /// <param name="letters">Pairs of letter and glyph; of two glyphs for a letter the lower one counts.</param>
    public static byte[] Of(IEnumerable<(int Letter, ushort Glyph)> letters)
    {
        var sorted = letters.Order().DistinctBy(l => l.Letter).ToList();
        var table = new byte[Head + GroupsHead + (sorted.Count * Group)];
        var span = table.AsSpan();
        BinaryPrimitives.WriteUInt16BigEndian(span[2..], 1);
        BinaryPrimitives.WriteUInt16BigEndian(span[4..], 3);
        BinaryPrimitives.WriteUInt16BigEndian(span[6..], 10);
        BinaryPrimitives.WriteUInt32BigEndian(span[8..], Head);
        var part = span[Head..];
        BinaryPrimitives.WriteUInt16BigEndian(part, 12);
        BinaryPrimitives.WriteUInt32BigEndian(part[4..], (uint)part.Length);
        BinaryPrimitives.WriteUInt32BigEndian(part[12..], (uint)sorted.Count);
        for (var i = 0; i < sorted.Count; i++)
        {
            var group = part[(GroupsHead + (i * Group))..];
            BinaryPrimitives.WriteUInt32BigEndian(group, (uint)sorted[i].Letter);
            BinaryPrimitives.WriteUInt32BigEndian(group[4..], (uint)sorted[i].Letter);
            BinaryPrimitives.WriteUInt32BigEndian(group[8..], sorted[i].Glyph);
        }

        return table;
    }
}
