using Advance.Paper.Layout;
using CsCheck;

namespace Advance.Tests.Paper.Layout;

public sealed class PartitionTests
{
    [Fact]
    public void Parts_are_as_even_as_the_order_allows() => Assert.Equal([2, 1, 2], Partition.Even([3, 3, 5, 2, 4], 3));

    [Fact]
    public void No_other_way_of_parting_has_a_lower_tallest_part() =>
        Gen.Int[1, 20].Array[1, 9].Select(Gen.Int[1, 4]).Sample((heights, parts) =>
        {
            var counts = Partition.Even(heights, parts);
            Assert.Equal(heights.Length, counts.Sum());
            Assert.InRange(counts.Count, 1, parts);
            Assert.Equal(Lowest(heights, parts), Tallest(heights, counts));
        });

    private static int Tallest(int[] heights, List<int> counts)
    {
        var at = 0;
        return counts.Max(c => heights[at..(at += c)].Sum());
    }

    private static int Lowest(int[] heights, int parts) => parts == 1 || heights.Length <= 1
        ? heights.Sum()
        : Enumerable.Range(1, heights.Length).Min(i => i == heights.Length ? heights.Sum() : Math.Max(heights[..i].Sum(), Lowest(heights[i..], parts - 1)));
}
