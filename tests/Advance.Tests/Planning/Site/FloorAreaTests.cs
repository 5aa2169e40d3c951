using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

public sealed class FloorAreaTests
{
    private static readonly Gen<FloorArea> Areas = Gen.Select(
        Gen.Double[-3, 3], Gen.Double[-3, 3], Gen.Double[0.2, 3], Gen.Double[0.2, 3], Gen.Double[-180, 180],
        (x, y, width, depth, turn) => new FloorArea(new Spot(x, y), new Footprint(width, depth), turn));

    // A point of both, found by trying many, proves that they overlap.
    [Fact]
    public void Areas_that_share_a_point_overlap() => Gen.Select(Areas, Areas).Sample((a, b) =>
    {
        if (Points(a).Any(point => IsInside(b, point)))
        {
            Assert.True(a.Overlaps(b));
        }
    });

    // Areas that overlap share a corner of one, or their sides cross; many points along the sides find either.
    [Fact]
    public void Areas_that_overlap_share_a_point_once_both_grow_a_little() => Gen.Select(Areas, Areas).Sample((a, b) =>
    {
        if (a.Overlaps(b))
        {
            var (grownA, grownB) = (Grown(a), Grown(b));
            Assert.Contains(Points(grownA), point => IsInside(grownB, point));
        }
    });

    [Fact]
    public void It_is_the_same_from_both_sides() => Gen.Select(Areas, Areas).Sample((a, b) => Assert.Equal(a.Overlaps(b), b.Overlaps(a)));

    [Fact]
    public void What_only_touches_does_not_overlap()
    {
        var one = new FloorArea(new Spot(0, 0), new Footprint(2, 2), 0);
        Assert.False(one.Overlaps(one with { Middle = new Spot(2, 0) }));
        Assert.True(one.Overlaps(one with { Middle = new Spot(1.99, 0) }));
    }

    [Fact]
    public void A_turned_corner_reaches_further_than_a_side()
    {
        var one = new FloorArea(new Spot(0, 0), new Footprint(2, 2), 0);
        var other = new FloorArea(new Spot(2.3, 0), new Footprint(2, 2), 0);
        Assert.False(one.Overlaps(other));
        Assert.True(one.Overlaps(other with { Turn = 45 }));
    }

    private static FloorArea Grown(FloorArea area) => area with { Covers = new Footprint(area.Covers.Width + 0.2, area.Covers.Depth + 0.2) };

    private static IEnumerable<(double X, double Y)> Points(FloorArea area)
    {
        const int Steps = 40;
        var (sin, cos) = Math.SinCos(area.Turn * Math.PI / 180);
        for (var across = 0; across <= Steps; across++)
        {
            for (var along = 0; along <= Steps; along++)
            {
                var (x, y) = (area.Covers.Width * (((double)across / Steps) - 0.5), area.Covers.Depth * (((double)along / Steps) - 0.5));
                yield return (area.Middle.X + (x * cos) - (y * sin), area.Middle.Y + (x * sin) + (y * cos));
            }
        }
    }

    private static bool IsInside(FloorArea area, (double X, double Y) point)
    {
        var (sin, cos) = Math.SinCos(area.Turn * Math.PI / 180);
        var (x, y) = (point.X - area.Middle.X, point.Y - area.Middle.Y);
        return Math.Abs((x * cos) + (y * sin)) < area.Covers.Width / 2 - 1e-5 && Math.Abs((y * cos) - (x * sin)) < area.Covers.Depth / 2 - 1e-5;
    }
}
