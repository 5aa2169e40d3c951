using Advance.Domain.Places;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

public sealed class OutlineTests
{
    private static readonly Outline Deck = new(8, 5);

    [Theory]
    [InlineData(4, 0, true)]
    [InlineData(-4, 5, true)]
    [InlineData(4.01, 2, false)]
    [InlineData(0, -0.01, false)]
    public void Its_edges_belong_to_a_deck(double x, double y, bool holds) => Assert.Equal(holds, Deck.Holds(new Spot(x, y)));

    [Theory]
    [InlineData(0, 0.8, 2, 2, 0, StageEdges.Front, 0.2)]
    [InlineData(0, 4.5, 2, 2, 0, StageEdges.Rear, 0.5)]
    [InlineData(3.8, 2.5, 1, 0.2, 0, StageEdges.StageLeft, 0.3)]
    [InlineData(3.8, 2.5, 1, 0.2, 90, StageEdges.None, 0)]
    [InlineData(-4.2, 2.5, 0.6, 0.6, 0, StageEdges.StageRight, 0.1)]
    [InlineData(-4.6, -0.4, 0.6, 0.7, -5, StageEdges.None, 0)]
    [InlineData(0, 2.5, 1, 1, 30, StageEdges.None, 0)]
    public void A_thing_straddles_an_edge_by_so_much(double x, double y, double width, double depth, double turn, StageEdges edge, double by)
    {
        var found = Deck.Straddled(new Spot(x, y), new Footprint(width, depth), turn);
        Assert.Equal((edge, by), (found.Edge, Math.Round(found.By, 9, MidpointRounding.AwayFromZero)));
    }

    /// <summary>Against a fine grid of points of the thing: some on the deck and some beside it.</summary>
    [Fact]
    public void A_thing_straddles_exactly_when_points_of_it_are_on_both_sides() =>
        Gen.Select(Gen.Double[-6, 6], Gen.Double[-2, 7], Gen.Double[0.2, 3], Gen.Double[0.2, 3], Gen.Double[-180, 180]).Sample(
            (x, y, width, depth, turn) =>
            {
                var (inside, outside) = Points(x, y, width, depth, turn);
                var (_, by) = Deck.Straddled(new Spot(x, y), new Footprint(width, depth), turn);
                var isNearly = by is > 0 and < 0.1;
                return isNearly || (by > 0) == (inside && outside);
            },
            iter: 2000);

    private static (bool Inside, bool Outside) Points(double x, double y, double width, double depth, double turn)
    {
        var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
        var (inside, outside) = (false, false);
        for (var step = 0; step < 41 * 41; step++)
        {
            var (across, along) = (((step % 41 / 40.0) - 0.5) * width, ((step / 41 / 40.0) - 0.5) * depth);
            var (atX, atY) = (x + (across * cos) + (along * sin), y - (across * sin) + (along * cos));
            var beyond = Math.Max(Math.Abs(atX) - (Deck.Width / 2), Math.Abs(atY - (Deck.Depth / 2)) - (Deck.Depth / 2));
            (inside, outside) = (inside || beyond < -1e-6, outside || beyond > 1e-6);
        }

        return (inside, outside);
    }
}
