namespace Advance.Planning;

/// <summary>One unit after the other takes what is best for it. Often nothing is better; else it is where the search starts from.</summary>
internal static class PortGreedy
{
    // From this round on nothing was asked for by hand or issued.
    private const int FreeRound = 2;

    /// <summary>An option for each unit; no two clash. Where all is full, it helps that wide units go first.</summary>
    public static PortOption[] Choose(PortProblem problem)
    {
        var (one, other) = (Choose(problem, isWideFirst: false), Choose(problem, isWideFirst: true));
        return problem.Weigh(one).AsSpan().SequenceCompareTo(problem.Weigh(other)) <= 0 ? one : other;
    }

    private static PortOption[] Choose(PortProblem problem, bool isWideFirst)
    {
        var chosen = new PortOption[problem.Units.Count];
        var served = new List<int>();
        foreach (var unit in Order(problem, isWideFirst))
        {
            chosen[unit] = Best(problem, unit, served, chosen);
            served.Add(unit);
        }

        return chosen;
    }

    // Fixed ones first, then those that were issued with a port, then those with a port of their own number; what is up all day leads.
    private static IOrderedEnumerable<int> Order(PortProblem problem, bool isWideFirst) =>
        Enumerable.Range(0, problem.Units.Count)
            .OrderBy(unit => Round(problem.Units[unit], problem.Options[unit]) is var round && isWideFirst ? Math.Min(round, FreeRound) : round)
            .ThenByDescending(unit => isWideFirst ? problem.Units[unit].Count : 0)
            .ThenByDescending(unit => problem.Units[unit].IsAllDay)
            .ThenByDescending(unit => problem.Units[unit].Wishes.Count)
            .ThenBy(unit => problem.Units[unit].First)
            .ThenBy(unit => unit);

    private static int Round(PortUnit unit, IReadOnlyList<PortOption> options) => unit switch
    {
        _ when unit.Wishes.Any(wish => wish.Fixed is not null) => 0,
        _ when unit.Wishes.SelectMany(wish => wish.Lines).Any(line => line.Issued is not null) => 1,
        _ when options[^1].Cost(PortAim.Crooked) > 0 && options.Any(option => option.Cost(PortAim.Crooked) == 0) => 2,
        _ => 3,
    };

    private static PortOption Best(PortProblem problem, int unit, List<int> served, PortOption[] chosen)
    {
        var shared = problem.Shared.FirstOrDefault(group => group.Contains(unit))?.Intersect(served).Select(other => chosen[other].Start).ToList() ?? [];
        PortOption? best = null;
        long[] least = [];
        foreach (var option in problem.Options[unit].Where(option => !served.Exists(other => problem.Clash(unit, option, other, chosen[other]))))
        {
            var costs = option.Costs.ToArray();
            costs[(int)PortAim.Moved] = shared.Count > 0 && !shared.Contains(option.Start) ? 1 : 0;
            if (best is null || costs.AsSpan().SequenceCompareTo(least) < 0)
            {
                (best, least) = (option, costs);
            }
        }

        return best!;
    }
}
