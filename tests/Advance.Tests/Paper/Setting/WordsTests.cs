using Advance.Paper.Setting;
using CsCheck;

namespace Advance.Tests.Paper.Setting;

public sealed class WordsTests
{
    [Theory]
    [InlineData("two words", "two| words")]
    [InlineData("  led \t by\nspaces ", " led| by| spaces|")]
    [InlineData("high-passed", "high-=passed")]
    [InlineData("P-02 10 m", "P-02| 10~m")]
    [InlineData("sub-18 + top-10", "sub-18| +| top-10")]
    [InlineData("25\u00A0m", "25~m")]
    [InlineData("power/shared-with-strangers", "power/|shared-=with-=strangers")]
    [InlineData("much left over, 9.43 m, of 10 more", "much| left| over,| 9.43~m,| of| 10| more")]
    [InlineData("SB1 in 4 a m", "SB1| in| 4| a| m")]
    [InlineData("and/or", "and/|or")]
    [InlineData("12/9", "12/9")]
    [InlineData("soft\u00ADhyphen", "softhyphen")]
    public void Text_is_cut_where_a_line_may_end(string text, string expected) =>
        Assert.Equal(expected.Replace("softhyphen", "soft^hyphen"), Told(text));

    [Fact]
    public void No_mark_that_turns_the_writing_reaches_a_line() =>
        Assert.All("\u202E\u202D\u2066\u200F\u0007\u001B\uFEFF", c => Assert.True(Words.IsDropped(c)));

    [Fact]
    public void No_letter_is_lost_and_none_comes_twice() =>
        Gen.String.Sample(text =>
        {
            var kept = string.Concat(text.Where(c => !char.IsWhiteSpace(c) && !char.IsControl(c) && !Words.IsDropped(c) && c is not ('\u200B' or '\u2060')));
            var cut = new List<string>();
            foreach (var range in Words.Split(text))
            {
                cut.Add(range.Of(text).ToString());
            }

            Assert.Equal(kept, string.Concat(cut));
        });

    /// <summary>A bar for where a line may end, two level ones for where it ends only inside a word that is too long, a wave for a space that holds, a roof for nothing at all.</summary>
    private static string Told(string text)
    {
        var told = "";
        foreach (var range in Words.Split(text))
        {
            told += range.Before switch
            {
                Words.Gap.Space => told.Length == 0 || range.Length == 0 ? told.Length == 0 ? " " : "|" : "| ",
                Words.Gap.Hyphen => "=",
                Words.Gap.Soft => "|",
                Words.Gap.HardSpace => "~",
                _ => told.Length == 0 ? "" : "^",
            };
            told += range.Of(text).ToString();
        }

        return told;
    }
}
