using Advance.Domain.Facts;
using Advance.Reading.Files;

namespace Advance.Tests.Reading.Files;

public sealed class TextSourceTest
{
    private readonly TextSource source = new("gig.yaml", "a: b\n  c: 😀d\n");

    [Fact]
    public void Finds_the_line_and_column_of_each_place()
    {
        Assert.Equal(new Mark("gig.yaml", 1, 1, 1), source.MarkAt(0, 1));
        Assert.Equal(new Mark("gig.yaml", 2, 6, 3), source.MarkAt(10, 3));
        Assert.Equal(new Mark("gig.yaml", 1, 4, 1), source.MarkAt(3, 100));
        Assert.Equal(new Mark("gig.yaml", 3, 1, 1), source.MarkAt(source.Text.Length, 1));
    }

    [Theory]
    [InlineData(2, 6, 3, "  c: 😀d", 5, 3)]
    [InlineData(1, 9, 5, "a: b", 4, 1)]
    [InlineData(3, 1, 1, "", 0, 1)]
    public void Quotes_a_line_and_keeps_the_caret_in_it(int line, int column, int length, string quoted, int start, int caret) =>
        Assert.Equal(new Quote(quoted, start, caret), source.Quote(new("gig.yaml", line, column, length)));

    [Fact]
    public void Has_no_quote_for_lines_that_it_has_not() => Assert.Null(source.Quote(new("gig.yaml", 4, 1)));
}
