namespace Advance.Planning;

/// <summary>
/// In which order fixtures are linked: position after position, always on to the nearest, and through each in the direction that makes the
/// whole line shortest. What hands nothing on comes last, since nothing can follow it.
/// </summary>
internal static class LineOrder
{
    private const double Slack = 1e-9;
    private const double Furthest = 1e6;

    /// <summary>The fixtures of one universe, in the order they are linked.</summary>
    /// <param name="fixtures">In the order of their numbers.</param>
    /// <param name="desk">Where the line starts; null where nobody knows.</param>
    public static IReadOnlyList<FixturePlan> Of(IEnumerable<FixturePlan> fixtures, Spot? desk)
    {
        var byEnd = fixtures.ToLookup(fixture => fixture.Link is not null);
        var positions = Positions(byEnd[true], desk);
        positions.AddRange(Positions(byEnd[false], positions.Count > 0 ? Middle(positions[^1]) : desk));
        return [.. Directed(positions, desk)];
    }

    private static List<List<FixturePlan>> Positions(IEnumerable<FixturePlan> fixtures, Spot? from)
    {
        var left = fixtures.GroupBy(fixture => fixture.Row.Position, StringComparer.Ordinal).Select(group => group.ToList()).ToList();
        var order = new List<List<FixturePlan>>();
        while (left.Count > 0)
        {
            var next = Nearest(left, order.Count > 0 ? Middle(order[^1]) : from);
            left.Remove(next);
            order.Add(next);
        }

        return order;
    }

    // As far away as each other: the one with the lowest number. What is nowhere waits until nothing else is left.
    private static List<FixturePlan> Nearest(List<List<FixturePlan>> positions, Spot? from)
    {
        var (best, least) = (positions[0], Far(positions[0]));
        foreach (var position in positions.Skip(1))
        {
            (best, least) = Far(position) < least - Slack ? (position, Far(position)) : (best, least);
        }

        return best;

        double Far(List<FixturePlan> position) => Middle(position) is { } middle ? Distance(middle, from) : Furthest;
    }

    // The shortest way that ends upwards or downwards through each position; upwards where both are as long.
    private static IEnumerable<FixturePlan> Directed(List<List<FixturePlan>> positions, Spot? desk)
    {
        var ways = new[] { (Length: 0.0, Order: (IReadOnlyList<FixturePlan>)[], End: desk) };
        foreach (var position in positions)
        {
            ways = [Through(position), Through([.. Enumerable.Reverse(position)])];
        }

        return Shortest(ways).Order;

        (double Length, IReadOnlyList<FixturePlan> Order, Spot? End) Through(List<FixturePlan> position)
        {
            var (length, order, _) = Shortest([.. ways.Select(way => (way.Length + Distance(position[0].Spot, way.End), way.Order, way.End))]);
            return (length, [.. order, .. position], position[^1].Spot);
        }
    }

    private static (double Length, IReadOnlyList<FixturePlan> Order, Spot? End) Shortest((double Length, IReadOnlyList<FixturePlan> Order, Spot? End)[] ways) =>
        ways.Aggregate((best, way) => way.Length < best.Length - Slack ? way : best);

    private static Spot? Middle(List<FixturePlan> fixtures) =>
        fixtures[0].Spot is { } first && fixtures[^1].Spot is { } last ? new Spot((first.X + last.X) / 2, (first.Y + last.Y) / 2) : null;

    // What is nowhere is as near as can be, so that it does not decide.
    private static double Distance(Spot? one, Spot? other) => one is { } from && other is { } to ? from.To(to) : 0;
}
