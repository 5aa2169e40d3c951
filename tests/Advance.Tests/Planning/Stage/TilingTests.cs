using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

/// <summary>Against trying every way to lay the decks.</summary>
public sealed class TilingTests
{
    [Fact]
    public void Decks_fill_a_stage_exactly_when_some_way_of_laying_them_does() =>
        Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6], Gen.Int[1, 4], Gen.Int[1, 4]).Sample(
            (width, depth, @long, wide) => Tiling.Fills(width * 500, depth * 500, @long * 500, wide * 500) == CanLay(new bool[width, depth], @long, wide));

    [Theory]
    [InlineData(8000, 5000, 2000, 1000, true)]
    [InlineData(5000, 5000, 2000, 1000, false)]
    [InlineData(7320, 4880, 2440, 1220, true)]
    [InlineData(6000, 1000, 3000, 2000, false)]
    [InlineData(8000, 5100, 2000, 1000, false)]
    public void Stages_that_people_build(int width, int depth, int @long, int wide, bool fills) =>
        Assert.Equal(fills, Tiling.Fills(width, depth, @long, wide));

    // The first free square must be the corner of some deck.
    private static bool CanLay(bool[,] taken, int @long, int wide)
    {
        for (var y = 0; y < taken.GetLength(1); y++)
        {
            for (var x = 0; x < taken.GetLength(0); x++)
            {
                if (!taken[x, y])
                {
                    return Try(taken, x, y, @long, wide) || Try(taken, x, y, wide, @long);
                }
            }
        }

        return true;
    }

    private static bool Try(bool[,] taken, int left, int top, int across, int along)
    {
        if (left + across > taken.GetLength(0) || top + along > taken.GetLength(1))
        {
            return false;
        }

        var next = (bool[,])taken.Clone();
        for (var x = left; x < left + across; x++)
        {
            for (var y = top; y < top + along; y++)
            {
                if (next[x, y])
                {
                    return false;
                }

                next[x, y] = true;
            }
        }

        return CanLay(next, across, along);
    }
}
