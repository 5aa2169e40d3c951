using System.Runtime.InteropServices;
using HarfBuzzSharp;
using SkiaSharp;
using HbFont = HarfBuzzSharp.Font;

namespace Advance.Paper.Setting;

/// <summary>One font, opened once for shaping and, when first drawn with, for drawing.</summary>
internal sealed class Face
{
    // Pinned for the life of the face: HarfBuzz and Skia both read from it without copying.
    private readonly byte[] bytes;
    // Nobody changes it once it is open. Then threads may share it: what the library makes when first asked it puts in place atomically.
    private readonly HbFont font;

    private Face(string name, byte[] bytes, HbFont font, int unitsPerEm)
    {
        this.bytes = bytes;
        this.font = font;
        Name = name;
        UnitsPerEm = unitsPerEm;
        Space = Advance(' ', unitsPerEm / 4);
        SpaceGlyph = font.TryGetNominalGlyph(' ', out var glyph) ? (ushort)glyph : (ushort)0;
    }

    public string Name { get; }

    /// <summary>Font units to an em, over 0.</summary>
    public int UnitsPerEm { get; }

    /// <summary>Width of a space in font units.</summary>
    public int Space { get; }

    public ushort SpaceGlyph { get; }

    /// <summary>Opens a font; null when the bytes are no font that can be shaped and drawn with.</summary>
    public static Face? Open(string name, ReadOnlySpan<byte> source)
    {
        var pinned = GC.AllocateUninitializedArray<byte>(source.Length, pinned: true);
        source.CopyTo(pinned);
        using var blob = new Blob(Marshal.UnsafeAddrOfPinnedArrayElement(pinned, 0), pinned.Length, MemoryMode.ReadOnly);
        if (blob.FaceCount == 0)
        {
            return null;
        }

        using var face = new HarfBuzzSharp.Face(blob, 0);
        if (face.GlyphCount == 0 || face.UnitsPerEm <= 0)
        {
            return null;
        }

        var scaled = new HbFont(face);
        scaled.SetScale(face.UnitsPerEm, face.UnitsPerEm);
        return new Face(name, pinned, scaled, face.UnitsPerEm);
    }

    public bool Covers(int rune) => font.TryGetNominalGlyph(rune, out _);

    public void Shape(HarfBuzzSharp.Buffer buffer, Feature[] features) => font.Shape(buffer, features);

    /// <summary>True when Skia can draw with it, too.</summary>
    public bool CanDraw()
    {
        using var data = SKData.Create(Marshal.UnsafeAddrOfPinnedArrayElement(bytes, 0), bytes.Length);
        using var typeface = SKTypeface.FromData(data);
        return typeface is { GlyphCount: > 0 };
    }

    /// <summary>A font file to draw these glyphs with, see <see cref="TrimmedFont"/>.</summary>
    public byte[] Trimmed(IReadOnlyDictionary<ushort, int> letters) => TrimmedFont.Of(bytes, letters);

    private int Advance(int rune, int otherwise) =>
        font.TryGetNominalGlyph(rune, out var glyph) ? font.GetHorizontalGlyphAdvance(glyph) : otherwise;
}
