using Advance.Paper;
using Advance.Paper.Setting;

namespace Advance.Tests.Paper.Setting;

public sealed class ShaperTests
{
    private readonly Faults faults = new();

    [Fact]
    public void All_digits_are_equally_wide()
    {
        using var shaper = new Shaper(FaceSet.Of([], faults), faults);
        foreach (var isStrong in new[] { false, true })
        {
            Assert.Single("0123456789".Select(d => shaper.Shape([d], isStrong).Width(9500)).Distinct());
        }
    }

    [Fact]
    public void Letters_are_kerned()
    {
        using var shaper = new Shaper(FaceSet.Of([], faults), faults);
        var apart = shaper.Shape("A", false).Width(100_000) + shaper.Shape("V", false).Width(100_000);
        Assert.True(shaper.Shape("AV", false).Width(100_000) < apart);
    }

    [Fact]
    public void No_sign_is_exchanged_for_another()
    {
        // With contextual alternates "->" would become an arrow and the x of "10x4" a multiplication sign.
        using var shaper = new Shaper(FaceSet.Of([], faults), faults);
        foreach (var text in new[] { "->", "10x4" })
        {
            var alone = text.Select(c => shaper.Shape([c], false).Runs[0].Glyphs[0]);
            Assert.Equal(alone, shaper.Shape(text, false).Runs[0].Glyphs);
        }
    }

    [Fact]
    public void A_word_is_shaped_once()
    {
        using var shaper = new Shaper(FaceSet.Of([], faults), faults);
        Assert.Same(shaper.Shape("wedge", false), shaper.Shape("wedge", false));
        Assert.NotSame(shaper.Shape("wedge", false), shaper.Shape("wedge", true));
    }

    [Fact]
    public void A_letter_that_no_font_has_is_told_with_its_text()
    {
        using var shaper = new Shaper(FaceSet.Of([], faults), faults);
        shaper.Shape("drum🥁", false);
        var fault = Assert.Single(faults.All);
        Assert.Equal(FaultKind.MissingGlyph, fault.Kind);
        Assert.Contains("U+1F941", fault.Text, StringComparison.Ordinal);
        Assert.Contains("drum🥁", fault.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_font_steps_in_for_what_the_first_lacks()
    {
        using var shaper = new Shaper(FaceSet.Of([new FontFile("signs", TinyFont.With('☂'))], faults), faults);
        var word = shaper.Shape("wet☂day", false);
        Assert.Equal(["Inter-Regular.ttf", "signs", "Inter-Regular.ttf"], word.Runs.Select(r => r.Face.Name));
        Assert.Equal([0u, 3u, 6u], word.Runs.Select(r => r.Clusters[0]));
        Assert.Empty(faults.All);
    }

    [Fact]
    public void A_file_that_is_no_font_is_told_and_left_out()
    {
        FaceSet.Of([new FontFile("notes.txt", "not a font"u8.ToArray()), new FontFile("empty", Array.Empty<byte>())], faults);
        Assert.Equal([FaultKind.UnreadableFont, FaultKind.UnreadableFont], faults.All.Select(f => f.Kind));
    }

    [Fact]
    public void Hebrew_runs_from_right_to_left()
    {
        using var shaper = new Shaper(FaceSet.Of([], faults), faults);
        Assert.True(shaper.Shape("שלום", false).IsRightToLeft);
        Assert.False(shaper.Shape("peace", false).IsRightToLeft);
    }
}
