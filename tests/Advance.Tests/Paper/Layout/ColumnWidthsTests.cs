using Advance.Paper.Layout;
using Advance.Paper.Tree;
using CsCheck;
using static Advance.Tests.Paper.Examples.Inlines;

namespace Advance.Tests.Paper.Layout;

public sealed class ColumnWidthsTests
{
    [Fact]
    public void Small_wishes_are_met_before_large_ones_are() =>
        Assert.Equal([30, 120, 20], ColumnWidths.Share(Columns(3), [10, 10, 10], [30, 900, 20], 170));

    [Fact]
    public void What_is_left_goes_to_the_columns_that_grow()
    {
        TableColumn[] columns = [Col("a"), Col("b") with { Grow = 1 }, Col("c") with { Grow = 3 }];
        Assert.Equal([10, 20, 40], ColumnWidths.Share(columns, [10, 10, 10], [10, 10, 10], 70));
    }

    [Fact]
    public void Without_a_column_that_grows_none_becomes_wide_and_empty() =>
        Assert.Equal([15, 30], ColumnWidths.Share(Columns(2), [10, 20], [10, 20], 1000));

    [Fact]
    public void Whatever_is_asked_for_the_width_is_kept_and_no_word_is_cut() =>
        (from count in Gen.Int[1, 8]
         from least in Gen.Int[1, 100].Array[count]
         from more in Gen.Int[0, 400].Array[count]
         from spare in Gen.Int[1, 900]
         select (least, more, spare)).Sample(t =>
         {
             var most = t.least.Zip(t.more, (l, m) => l + m).ToArray();
             var width = t.least.Sum() + t.spare;
             var widths = ColumnWidths.Share(Columns(t.least.Length), t.least, most, width);
             Assert.True(widths.Sum() <= width);
             Assert.All(widths.Zip(t.least), p => Assert.True(p.First >= p.Second));
             if (most.Sum() >= width)
             {
                 Assert.Equal(width, widths.Sum());
             }
         });

    private static TableColumn[] Columns(int count) => [.. Enumerable.Range(0, count).Select(i => Col($"c{i}"))];
}
