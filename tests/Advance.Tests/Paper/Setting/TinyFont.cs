using Advance.Paper.Setting;

namespace Advance.Tests.Paper.Setting;

/// <summary>Makes a font that has one letter: Inter with another table of letters.</summary>
internal static class TinyFont
{
    /// <summary>A font in which a letter has the shape of Inter's X, and no other letter is known.</summary>
    public static byte[] With(char letter)
    {
        var inter = BuiltIn.Resource("Inter-Regular.ttf");
        var tables = TrimmedFont.Tables(inter);
        var (start, length) = tables["cmap"];
        using var shaper = new Shaper(FaceSet.Of([], new Advance.Paper.Faults()), new Advance.Paper.Faults());
        var map = LetterMap.Of([(letter, shaper.Shape("X", false).Runs[0].Glyphs[0])]);
        Assert.True(map.Length <= length);
        map.CopyTo(inter, start);
        return inter;
    }
}
