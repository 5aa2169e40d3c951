using System.Text;
using Advance.Domain.Facts;
using Advance.Domain.Findings;
using Advance.Reading.Files;

namespace Advance.Tests.Reading.Files;

public sealed class TextDecoderTest
{
    private readonly List<Finding> findings = [];

    [Fact]
    public void A_byte_order_mark_is_not_part_of_the_text()
    {
        var source = Decode([0xEF, 0xBB, 0xBF, .. "gig: x\n"u8]);

        Assert.Equal("gig: x\n", source!.Text);
        Assert.Empty(findings);
    }

    [Fact]
    public void Every_line_end_and_every_space_is_made_plain()
    {
        var source = Decode(Encoding.UTF8.GetBytes("a:\r\n\u00A0\u2009b: 12\u202Fm\rc: d\r\n"));

        Assert.Equal("a:\n  b: 12 m\nc: d\n", source!.Text);
        Assert.Empty(findings);
    }

    [Theory]
    [InlineData("reading/encoding", 2, 6, new byte[] { (byte)'a', (byte)'\n', (byte)'b', (byte)':', (byte)' ', 0xC3, 0xA9, (byte)'x', 0xE9, (byte)'\n' })]
    [InlineData("reading/not-text", 1, 4, new byte[] { (byte)'a', (byte)':', (byte)' ', 0, (byte)'b' })]
    [InlineData("reading/encoding", 1, 1, new byte[] { 0xFF, 0xFE, (byte)'a', 0 })]
    [InlineData("reading/not-text", 1, 1, new byte[] { 0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 0x1A, 10, 0, 0, 0, 13 })]
    [InlineData("reading/not-text", 1, 1, new byte[] { 0xFF, 1, 2, 3, 4, 5, 6, 7, 8 })]
    public void What_is_no_text_is_one_finding_at_its_place(string rule, int line, int column, byte[] bytes)
    {
        Assert.Null(Decode(bytes));
        var finding = Assert.Single(findings);
        Assert.Equal((rule, new Mark("gig.yaml", line, column)), (finding.Rule, finding.At));
    }

    [Fact]
    public void Unseen_characters_are_shown_and_read_as_spaces()
    {
        var source = Decode(Encoding.UTF8.GetBytes("a: x\u200By\nb: c\u2028d\n"));

        Assert.Equal("a: x y\nb: c d\n", source!.Text);
        Assert.Equal([new Mark("gig.yaml", 1, 5), new Mark("gig.yaml", 2, 5)], findings.Select(finding => finding.At));
        Assert.Contains("U+200B", findings[0].Says.ToString(), StringComparison.Ordinal);
    }

    private TextSource? Decode(byte[] bytes) => TextDecoder.Decode("gig.yaml", bytes, findings);
}
