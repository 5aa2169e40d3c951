namespace Advance.Planning;

/// <summary>Which choices fixed by hand stand in the way of an answer in which everything is fed and nothing carries too much.</summary>
internal static class CircuitPins
{
    // Each one tried is a problem solved.
    private const int MostTried = 24;

    // What is fuller by less than a twentieth of a rating is nobody's business; common practice, no source.
    private const int Worth = 50;

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

    /// <summary>
    /// The wishes fixed by hand on what is fullest, and how full that need not be, per mille, were they free: by an answer that was found, not the
    /// best there is. No wishes where nothing that much better was found.
    /// </summary>
    public static (IReadOnlyList<int> Pins, int Use) Costly(CircuitProblem problem, CircuitAnswer answer)
    {
        var pins = answer.Score.Use < Worth || !IsGood(problem, answer.Score) ? [] : Hottest(problem, answer);
        if (pins.Count == 0)
        {
            return ([], 0);
        }

        var freed = Freed(problem, pins);
        var found = CircuitGreedy.Build(freed, CircuitLeeway.All(freed), CircuitGreedy.Order(freed), target: 0).Score;
        return found.CompareHead(answer.Score) <= 0 && found.Use <= answer.Score.Use - Worth ? (pins, found.Use + CircuitScore.Comfortable) : ([], 0);
    }

    private static bool Helps(CircuitProblem problem, IReadOnlyList<int> pins) => IsGood(problem, CircuitSolver.Solve(Freed(problem, pins)).Score);

    private static CircuitProblem Freed(CircuitProblem problem, IReadOnlyList<int> pins) =>
        problem with { Wishes = [.. problem.Wishes.Select((wish, index) => pins.Contains(index) ? wish with { IsFixed = false } : wish)] };

    private static List<int> Hottest(CircuitProblem problem, CircuitAnswer answer)
    {
        var hot = Enumerable.Range(0, problem.Nodes.Count).Where(node => UseOf(problem, answer, node) == answer.Score.Use).ToHashSet();
        return
        [
            .. Enumerable.Range(0, problem.Wishes.Count).Where(index => problem.Wishes[index].IsFixed && answer.Taken[index] is { } taken && problem.Groups[taken.Group] is var group
                && ((group.Limit is { } limit && CircuitScore.AboveComfort(problem.Wishes[index].Most, limit) == answer.Score.Use) || group.Nodes.Any(hot.Contains))),
        ];
    }

    private static int UseOf(CircuitProblem problem, CircuitAnswer answer, int node) => problem.Nodes[node].Limit is { } limit
        ? Enumerable.Range(0, problem.States).Max(state => CircuitScore.AboveComfort(On(problem, answer, node, state), limit))
        : 0;

    private static long On(CircuitProblem problem, CircuitAnswer answer, int node, int state) => problem.Nodes[node].Others[state]
        + problem.Wishes.Where((_, index) => answer.Taken[index] is { } taken && problem.Groups[taken.Group].Nodes.Contains(node)).Sum(wish => (long)wish.Draws[state]);

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
        && Enumerable.Range(0, problem.States).Any(state => On(problem, answer, node, state) > limit);
}
