namespace Advance.Planning;

/// <summary>What no answer can be better than, where it feeds everything and keeps all that was fixed by hand.</summary>
internal static class CircuitBounds
{
    /// <summary>Whether an answer that is best as far as each choice can be priced by itself is best in all.</summary>
    public static bool Prove(CircuitProblem problem, CircuitScore score) =>
        problem.Wishes.Count == 0
        || (score is { Broken: 0, Dark: 0, Over: 0, Spread: 0 } && score.Strain <= LeastStrain(problem) && score.Use <= LeastUse(problem) && score.Earths <= LeastEarths(problem));

    // A unit that no breaker there is lets start is no reason to look further.
    private static long LeastStrain(CircuitProblem problem) =>
        problem.Wishes.Sum(wish => Allowed(wish).Min(option => CircuitStrain.On(problem.Groups[option.Group], wish)));

    private static IEnumerable<CircuitOption> Allowed(CircuitWish wish) => wish.Options.Where(option => !wish.IsFixed || option.Keeps);

    // Each node carries at least what has no other way; each wish loads at least the best outlet it may have.
    private static int LeastUse(CircuitProblem problem)
    {
        var forced = problem.Wishes.Select(wish => (wish.Draws, Nodes: ForcedOn(problem, wish))).ToList();
        var most = 0;
        for (var state = 0; state < problem.States; state++)
        {
            most = Math.Max(most, problem.Nodes.Select((node, index) => node.Limit is { } limit
                ? CircuitScore.AboveComfort(node.Others[state] + forced.Where(one => one.Nodes.Contains(index)).Sum(one => (long)one.Draws[state]), limit)
                : 0).DefaultIfEmpty().Max());
            most = Math.Max(most, problem.Wishes.Max(wish => Allowed(wish).Min(option => problem.Groups[option.Group].Limit is { } limit
                ? CircuitScore.AboveComfort(wish.Draws[state], limit)
                : 0)));
        }

        return most;
    }

    private static HashSet<int> ForcedOn(CircuitProblem problem, CircuitWish wish)
    {
        HashSet<int>? all = null;
        foreach (var nodes in Allowed(wish).Select(option => problem.Groups[option.Group].Nodes))
        {
            all = all is null ? [.. nodes] : [.. all.Where(nodes.Contains)];
        }

        return all ?? [];
    }

    private static int LeastEarths(CircuitProblem problem)
    {
        var sound = Forced(problem, CircuitEarth.Sound);
        var some = problem.Wishes.Any(wish => wish.Earth == CircuitEarth.Sound) ? 1 : 0;
        return Math.Max(sound.Count, some) + Forced(problem, CircuitEarth.Light).Count(sound.Contains);
    }

    private static HashSet<int> Forced(CircuitProblem problem, CircuitEarth earth) =>
    [
        .. problem.Wishes.Where(wish => wish.Earth == earth)
            .Select(wish => Allowed(wish).Select(option => problem.Groups[option.Group].Supply).Distinct().ToList())
            .Where(supplies => supplies.Count == 1)
            .Select(supplies => supplies[0]),
    ];
}
