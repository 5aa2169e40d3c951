namespace Advance.Planning;

/// <summary>Which choices fixed by hand stand in the way of an answer in which everything is fed and nothing carries too much.</summary>
internal static class CircuitPins
{
    // Each one tried is a problem solved.
    private const int MostTried = 24;

    /// <summary>
    /// The wishes to free, by their places: one if one is enough, else a set of which none can be left out. Empty where nothing is wrong, or freeing
    /// them all does not help.
    /// </summary>
    public static IReadOnlyList<int> ToFree(CircuitProblem problem, CircuitAnswer answer)
    {
        var pins = IsGood(problem, answer.Score) ? [] : Candidates(problem, answer);
        if (pins.Count is 0 or > MostTried || !Helps(problem, pins))
        {
            return [];
        }

        foreach (var pin in pins.Where(pin => Helps(problem, [pin])))
        {
            return [pin];
        }

        foreach (var pin in pins.ToList())
        {
            List<int> others = [.. pins.Where(other => other != pin)];
            pins = Helps(problem, others) ? others : pins;
        }

        return pins;
    }

    private static bool Helps(CircuitProblem problem, IReadOnlyList<int> pins)
    {
        var freed = problem with { Wishes = [.. problem.Wishes.Select((wish, index) => pins.Contains(index) ? wish with { IsFixed = false } : wish)] };
        return IsGood(problem, CircuitSolver.Solve(freed).Score);
    }

    // What fits nowhere stays dark whatever is freed.
    private static bool IsGood(CircuitProblem problem, CircuitScore score) =>
        score.Over == 0 && score.Dark == problem.Wishes.Where(wish => wish.Options.Count == 0).Sum(wish => wish.Units);

    // Where there are many, those alone that take what is short.
    private static List<int> Candidates(CircuitProblem problem, CircuitAnswer answer)
    {
        List<int> all = [.. Enumerable.Range(0, problem.Wishes.Count).Where(index => problem.Wishes[index].IsFixed)];
        return all.Count <= MostTried ? all : InTheWay(problem, answer);
    }

    private static List<int> InTheWay(CircuitProblem problem, CircuitAnswer answer)
    {
        var wanted = problem.Wishes.Where((_, index) => answer.Taken[index] is null).SelectMany(wish => wish.Options).Select(option => option.Group).ToHashSet();
        var full = Enumerable.Range(0, problem.Nodes.Count).Where(node => IsFull(problem, answer, node)).ToHashSet();
        return
        [
            .. Enumerable.Range(0, problem.Wishes.Count).Where(index => problem.Wishes[index].IsFixed && answer.Taken[index] is { } taken
                && (wanted.Contains(taken.Group) || problem.Wishes[index].Most > problem.Groups[taken.Group].Limit || problem.Groups[taken.Group].Nodes.Any(full.Contains))),
        ];
    }

    private static bool IsFull(CircuitProblem problem, CircuitAnswer answer, int node) => problem.Nodes[node].Limit is { } limit
        && Enumerable.Range(0, problem.States).Any(state => problem.Nodes[node].Others[state]
            + problem.Wishes.Where((_, index) => answer.Taken[index] is { } taken && problem.Groups[taken.Group].Nodes.Contains(node)).Sum(wish => (long)wish.Draws[state]) > limit);
}
