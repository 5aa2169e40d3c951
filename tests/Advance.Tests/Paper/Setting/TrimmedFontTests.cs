using Advance.Paper.Setting;
using SkiaSharp;

namespace Advance.Tests.Paper.Setting;

public sealed class TrimmedFontTests
{
    private static readonly byte[] Inter = BuiltIn.Resource("Inter-Regular.ttf");

    [Fact]
    public void Used_glyphs_keep_their_number_and_shape_and_others_lose_theirs()
    {
        // An accented letter is made of two glyphs, which have to stay with it.
        using var whole = SKTypeface.FromData(SKData.CreateCopy(Inter));
        var used = whole.GetGlyphs("Åé7");
        using var trimmed = SKTypeface.FromData(SKData.CreateCopy(TrimmedFont.Of(Inter, used.ToDictionary(g => g, _ => 0))));
        using var before = new SKFont(whole, 100);
        using var after = new SKFont(trimmed, 100);
        foreach (var glyph in used)
        {
            Assert.Equal(before.GetGlyphPath(glyph).ToSvgPathData(), after.GetGlyphPath(glyph).ToSvgPathData());
        }

        Assert.True(after.GetGlyphPath(whole.GetGlyphs("q")[0]).IsEmpty);
    }

    [Fact]
    public void It_is_a_small_part_of_the_whole()
    {
        using var whole = SKTypeface.FromData(SKData.CreateCopy(Inter));
        Assert.InRange(TrimmedFont.Of(Inter, whole.GetGlyphs("abc").ToDictionary(g => g, _ => 0)).Length, 1000, Inter.Length / 4);
    }

    [Fact]
    public void What_has_no_such_outlines_stays_as_it_is()
    {
        var other = "OTTO, whose outlines are of another kind"u8.ToArray();
        Assert.Same(other, TrimmedFont.Of(other, new Dictionary<ushort, int> { [1] = 2 }));
    }
}
