using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

/// <summary>The ladder round a corner, as calculus textbooks set it (from memory), and its rectangle.</summary>
public sealed class CornerTests
{
    private static readonly Gen<(double In, double Out, double Width)> Corners =
        Gen.Select(Gen.Double[0.6, 4], Gen.Double[0.6, 4], Gen.Double[0.01, 0.59]);

    [Theory]
    [InlineData(1, 1, 2.8284271247)]
    [InlineData(8, 27, 46.8721667)]
    [InlineData(1, 8, 11.1803398875)]
    public void A_ladder_is_as_long_as_the_textbook_says(double wayIn, double wayOut, double longest)
    {
        Assert.Equal(longest, Math.Pow(Math.Cbrt(wayIn * wayIn) + Math.Cbrt(wayOut * wayOut), 1.5), 6);
        Assert.Equal(longest, Corner.Room(wayIn, wayOut, 0, Corner.Tightest(wayIn, wayOut, 0)), 6);
    }

    [Fact]
    public void Between_two_like_ways_it_is_tightest_at_45_degrees() => Gen.Select(Gen.Double[0.6, 4], Gen.Double[0.01, 0.59]).Sample((way, width) =>
        Assert.Equal((2 * Math.Sqrt(2) * way) - (2 * width), Corner.Room(way, way, width, Corner.Tightest(way, way, width)), 6));

    [Fact]
    public void No_angle_has_less_room_than_the_tightest() => Corners.Sample(corner =>
    {
        var tightest = Corner.Room(corner.In, corner.Out, corner.Width, Corner.Tightest(corner.In, corner.Out, corner.Width));
        for (var degrees = 1; degrees < 90; degrees++)
        {
            Assert.True(Corner.Room(corner.In, corner.Out, corner.Width, degrees * Math.PI / 180) >= tightest - 1e-9);
        }
    });

    // At every angle the inner corner must lie outside the rectangle whose outer side slides along both outer walls.
    [Fact]
    public void What_passes_clears_the_inner_corner_at_every_angle() => Gen.Select(Corners, Gen.Double[0.1, 8]).Sample((corner, length) =>
    {
        var (wayIn, wayOut, width) = corner;
        var clears = Enumerable.Range(1, 899).All(step =>
        {
            var angle = step * Math.PI / 1800;
            return (wayIn * Math.Sin(angle)) + (wayOut * Math.Cos(angle)) - (length * Math.Sin(angle) * Math.Cos(angle)) >= width;
        });
        if (length > Math.Max(wayIn, wayOut) + 0.01 && Math.Abs(length - Corner.Room(wayIn, wayOut, width, Corner.Tightest(wayIn, wayOut, width))) > 0.01)
        {
            Assert.Equal(clears, Corner.Passes(wayIn, wayOut, length, width));
        }
    });

    [Fact]
    public void What_is_too_wide_for_a_way_does_not_pass_however_short() => Assert.False(Corner.Passes(0.8, 1.5, 0.9, 0.85));

    [Fact]
    public void What_fits_across_the_way_out_needs_no_turn() => Assert.True(Corner.Passes(1.5, 2.2, 2.2, 1.5));
}
