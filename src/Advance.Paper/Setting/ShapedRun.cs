namespace Advance.Paper.Setting;

/// <summary>Glyphs of one font, from left to right. All measures are in font units of the face.</summary>
/// <param name="Face">The font.</param>
/// <param name="Glyphs">Their numbers in the font.</param>
/// <param name="Advances">How far each moves on.</param>
/// <param name="OffsetsX">How far each is moved to the right; null when none is.</param>
/// <param name="OffsetsY">How far each is moved up; null when none is.</param>
/// <param name="Clusters">For each glyph where its text begins, in UTF-8 bytes of the word.</param>
/// <param name="Units">Sum of the advances.</param>
internal sealed record ShapedRun(
    Face Face,
    ushort[] Glyphs,
    int[] Advances,
    int[]? OffsetsX,
    int[]? OffsetsY,
    uint[] Clusters,
    int Units)
{
    /// <summary>Width in 1/1000 pt at a size in 1/1000 pt.</summary>
    public int Width(int size) => (int)((((long)Units * size) + (Face.UnitsPerEm / 2)) / Face.UnitsPerEm);
}
