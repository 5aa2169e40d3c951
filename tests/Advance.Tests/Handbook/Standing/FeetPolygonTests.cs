using Advance.Handbook;
using CsCheck;

namespace Advance.Tests.Handbook.Standing;

/// <summary>The polygon around feet.</summary>
public sealed class FeetPolygonTests
{
    private static readonly Gen<(double X, double Y)> Foot = Gen.Select(Gen.Int[-2000, 2000], Gen.Int[-2000, 2000], (x, y) => (x / 1000.0, y / 1000.0));

    [Fact]
    public void A_foot_inside_changes_nothing()
    {
        var square = FeetPolygon.Of([(-1, -1), (1, -1), (1, 1), (-1, 1), (0.2, 0.1), (0, -1)])!;
        Assert.Equal(4, square.Corners.Count);
        Assert.All(square.Edges, edge => Assert.Equal(1, edge.Offset, 12));
    }

    [Fact]
    public void Three_legs_make_three_edges()
    {
        var three = FeetPolygon.Of([(0, 1), (-0.8660254037844386, -0.5), (0.8660254037844386, -0.5)])!;
        Assert.Equal(3, three.Corners.Count);
        Assert.All(three.Edges, edge => Assert.Equal(0.5, edge.Offset, 6));
    }

    [Fact]
    public void Feet_in_a_line_carry_nothing()
    {
        Assert.Null(FeetPolygon.Of([(0, 0), (1, 1), (2, 2)]));
        Assert.Null(FeetPolygon.Of([(0, 0), (1, 1)]));
    }

    [Fact]
    public void All_feet_are_inside_all_edges_and_ways_out_have_length_one() =>
        Foot.Array[3, 9].Sample(feet =>
        {
            if (FeetPolygon.Of(feet) is not { } polygon)
            {
                return;
            }

            foreach (var edge in polygon.Edges)
            {
                Assert.Equal(1, (edge.X * edge.X) + (edge.Y * edge.Y), 9);
                Assert.All(feet, foot => Assert.True(FeetPolygon.Inside(edge, foot.X, foot.Y) >= -1e-6));
            }
        });
}
