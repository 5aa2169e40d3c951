using Advance.Domain.Naming;
using Advance.Sheets.Templating;

namespace Advance.Tests.Sheets.Templating;

public sealed class NearestNameTests
{
    [Theory]
    [InlineData("tabel", "table")]
    [InlineData("colspna", "colspan")]
    [InlineData("Table", "table")]
    [InlineData("lable", "label")]
    [InlineData("labels", "label")]
    [InlineData("zzz", null)]
    [InlineData("", null)]
    public void The_fewest_changed_letters_win(string written, string? meant) => Assert.Equal(meant, Nearest.To(written, ["label", "table", "colspan"]));

    [Fact]
    public void A_long_list_is_not_told()
    {
        Assert.Equal("", NearestName.Cure("zzz", [.. Enumerable.Range(0, 13).Select(i => $"name{i}")]));
        Assert.Equal("Known here: `b`, `a`.", NearestName.Cure("zzz", ["b", "a"]));
        Assert.Equal("", NearestName.Cure("zzz", []));
    }
}
