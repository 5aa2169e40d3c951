using Advance.Paper.Layout;
using Advance.Paper.Tree;

namespace Advance.Tests.Paper.Layout;

public sealed class TableSplitTests
{
    private static readonly IReadOnlyList<TableColumn> Columns = [.. Enumerable.Range(0, 14).Select(i => new TableColumn($"c{i}", []) { IsKey = i == 0 })];
    private static readonly int[] Least = [.. Enumerable.Repeat(1000, 14)];

    [Theory]
    [InlineData(7, 3, 5)]
    [InlineData(8, 2, 7)]
    [InlineData(14, 1, 13)]
    [InlineData(2, 13, 1)]
    public void As_few_parts_as_there_must_be_and_as_even_as_they_can(int columnsAcross, int parts, int mostBesideTheKey)
    {
        var split = TableSplit.Parts(Columns, Least, gap: 0, width: columnsAcross * 1000)!;
        Assert.Equal(parts, split.Count);
        Assert.Equal(mostBesideTheKey, split.Max(part => part.Length - 1));
        Assert.All(split, part => Assert.Equal(0, part[0]));
        Assert.Equal(Enumerable.Range(1, 13), split.SelectMany(part => part.Skip(1)));
    }

    [Fact]
    public void A_column_wider_than_the_page_beside_its_key_cannot_be_split_off() =>
        Assert.Null(TableSplit.Parts(Columns, Least, gap: 0, width: 1999));
}
