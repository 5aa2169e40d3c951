using Advance.Domain.Gigs;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

/// <summary>Against a second way of working out the same, and what holds of every route.</summary>
public sealed class RoutesPropertyTests
{
    private const double Width = 8;
    private const double Depth = 5;

    // To the centimetre, as people measure.
    private static readonly Gen<Spot> OnDeck = Gen.Select(Gen.Int[-400, 400], Gen.Int[0, 500], (x, y) => new Spot(x / 100.0, y / 100.0));
    private static readonly Gen<Spot> Anywhere = Gen.Select(Gen.Int[-2000, 2000], Gen.Int[-2000, 1200], (x, y) => new Spot(x / 100.0, y / 100.0));
    private static readonly Gen<CableWay> Ways = Gen.Select(Anywhere.Array[2, 4], Gen.Int[0, 1000], (corners, number) =>
        CableGigs.Way($"way {number}", "", [.. corners.Select(spot => (spot.X, spot.Y))]));

    private static readonly Gen<Routes> Surveys = Gen.Select(Ways.Array[0, 3], Anywhere.Array[0, 2], (ways, keep) => CableGigs.Routes(
        CableGigs.OnDeck([.. ways.DistinctBy(way => way.Name)]), [.. keep.Select((spot, index) => CableGigs.Keep($"exit {index}", spot.X, spot.Y, 1.5))]));

    [Fact]
    public void A_lead_between_two_things_on_the_deck_is_as_long_as_the_best_way_round_its_edge() => Gen.Select(OnDeck, OnDeck).Sample((from, to) =>
    {
        var expected = from.To(to) <= 3 + 1e-6 ? [from.To(to)] : RoundTheEdge(from, to);
        var path = CableGigs.Routes(CableGigs.OnDeck()).Find(from, to).Path.Meters;
        Assert.Contains(expected, length => Math.Abs(length - path) < 0.07);
    });

    [Fact]
    public void No_route_is_shorter_than_the_straight_line_and_it_is_in_one_piece() => Gen.Select(Surveys, Anywhere, Anywhere).Sample((routes, from, to) =>
    {
        var route = routes.Find(from, to);
        Assert.True(route.Path.Meters >= from.To(to) - 1e-6);
        Assert.Equal(from == to, route.Legs.Count == 0);
        foreach (var (before, next) in route.Legs.Zip(route.Legs.Skip(1)))
        {
            Assert.True(before.To.To(next.From) < 0.001);
        }

        if (route.Legs.Count > 0)
        {
            Assert.True(route.Legs[0].From.To(from) < 0.001 && route.Legs[^1].To.To(to) < 0.001);
        }
    });

    [Fact]
    public void It_is_as_far_there_as_back() => Gen.Select(Surveys, Anywhere, Anywhere).Sample((routes, from, to) =>
        Assert.Equal(routes.Path(from, to).Meters, routes.Path(to, from).Meters, 9));

    [Fact]
    public void The_shortest_ways_of_a_network_are_those_of_another_algorithm() =>
        Gen.Select(Gen.Int[1, 9], Gen.Select(Gen.Int[0, 8], Gen.Int[0, 8], Gen.Int[0, 20]).Array[0, 20]).Sample((count, edges) =>
        {
            var inside = edges.Where(edge => edge.Item1 < count && edge.Item2 < count).ToList();
            var neighbours = Enumerable.Range(0, count).Select(_ => new List<(int To, double Cost)>()).ToArray();
            foreach (var (one, other, cost) in inside)
            {
                neighbours[one].Add((other, cost));
                neighbours[other].Add((one, cost));
            }

            var expected = AllPairs(count, inside);
            for (var from = 0; from < count; from++)
            {
                var ways = ShortestWays.Find(from, neighbours);
                Assert.Equal(Enumerable.Range(0, count).Select(to => expected[from, to]), Enumerable.Range(0, count).Select(ways.Cost));
            }
        });

    // Floyd and Warshall.
    private static double[,] AllPairs(int count, IEnumerable<(int, int, int)> edges)
    {
        var far = new double[count, count];
        for (var one = 0; one < count; one++)
        {
            for (var other = 0; other < count; other++)
            {
                far[one, other] = one == other ? 0 : double.PositiveInfinity;
            }
        }

        foreach (var (one, other, cost) in edges)
        {
            far[one, other] = far[other, one] = Math.Min(far[one, other], cost);
        }

        for (var over = 0; over < count; over++)
        {
            for (var one = 0; one < count; one++)
            {
                for (var other = 0; other < count; other++)
                {
                    far[one, other] = Math.Min(far[one, other], far[one, over] + far[over, other]);
                }
            }
        }

        return far;
    }

    // Every pair of edges to leave the floor at, and both ways round; the downstage edge and the deck itself are avoided as a stagehand would.
    // Of ways that are as good as each other, any.
    private static IReadOnlyList<double> RoundTheEdge(Spot from, Spot to)
    {
        var ways = new List<(double Cost, double Length)>();
        foreach (var (out_, exit) in Feet(from))
        {
            foreach (var (in_, entry) in Feet(to))
            {
                foreach (var (cost, length) in new[] { Round(exit, entry), Round(entry, exit) })
                {
                    ways.Add((Avoided(out_) + cost + Avoided(in_), out_ + length + in_));
                }
            }
        }

        var best = ways.Min(way => way.Cost);
        return [.. ways.Where(way => way.Cost < best + 1e-4).Select(way => way.Length)];
    }

    private static double Avoided(double across) => across <= 1 ? across : 1 + (3 * (across - 1));

    // Metres to each edge, and where on it: once round from downstage right, the downstage edge first.
    private static IEnumerable<(double Far, double At)> Feet(Spot spot) =>
    [
        (spot.Y, spot.X + (Width / 2)),
        ((Width / 2) - spot.X, Width + spot.Y),
        (Depth - spot.Y, Width + Depth + ((Width / 2) - spot.X)),
        (spot.X + (Width / 2), (2 * Width) + Depth + (Depth - spot.Y)),
    ];

    private static (double Cost, double Length) Round(double from, double to)
    {
        var length = to >= from ? to - from : (2 * (Width + Depth)) - from + to;
        double Front(double a, double b) => Math.Max(0, Math.Min(b, Width) - Math.Min(a, Width));
        var front = to >= from ? Front(from, to) : Front(from, Width) + Front(0, to);
        return (length + (0.05 * front), length);
    }
}
