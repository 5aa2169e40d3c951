namespace Advance.Planning;

/// <summary>
/// In which order fixtures are linked: position after position, always on to the nearest, and through a position from the end that is
/// reached first. What hands nothing on comes last, since nothing can follow it.
/// </summary>
internal static class LineOrder
{
    private const double Slack = 1e-9;

    /// <summary>The fixtures of one universe, in the order they are linked.</summary>
    /// <param name="fixtures">In the order of their numbers.</param>
    /// <param name="desk">Where the line starts; null where nobody knows.</param>
    public static IReadOnlyList<FixturePlan> Of(IEnumerable<FixturePlan> fixtures, Spot? desk)
    {
        var ends = fixtures.ToLookup(fixture => fixture.Link is not null);
        var order = new List<FixturePlan>();
        foreach (var part in new[] { ends[true], ends[false] })
        {
            var left = part.GroupBy(fixture => fixture.Row.Position, StringComparer.Ordinal).Select(group => group.ToList()).ToList();
            while (left.Count > 0)
            {
                var next = Nearest(left, order.Count > 0 ? order[^1].Spot : desk);
                left.Remove(next);
                order.AddRange(Along(next, order.Count > 0 ? order[^1].Spot : desk));
            }
        }

        return order;
    }

    // As far away as each other: the one with the lowest number.
    private static List<FixturePlan> Nearest(List<List<FixturePlan>> positions, Spot? from)
    {
        var best = positions[0];
        foreach (var position in positions.Skip(1))
        {
            best = Distance(position, from) < Distance(best, from) - Slack ? position : best;
        }

        return best;
    }

    private static double Distance(List<FixturePlan> fixtures, Spot? from) =>
        from is { } start ? fixtures.Where(fixture => fixture.Spot is not null).Select(fixture => fixture.Spot!.Value.To(start)).DefaultIfEmpty(double.MaxValue).Min() : 0;

    private static IEnumerable<FixturePlan> Along(List<FixturePlan> fixtures, Spot? from) =>
        from is { } start && fixtures[0].Spot is { } first && fixtures[^1].Spot is { } last && last.To(start) < first.To(start) - Slack
            ? Enumerable.Reverse(fixtures)
            : fixtures;
}
