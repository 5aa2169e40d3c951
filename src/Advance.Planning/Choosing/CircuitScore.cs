namespace Advance.Planning;

/// <summary>
/// How good an answer is: aims in order, smaller is better, the first outweighs all that follow. Feeding everything comes before ratings, so
/// that an overload is one finding that names the supply and not a dozen loads without an outlet; where both can be had, both are.
/// </summary>
/// <param name="Broken">Choices fixed by hand that were not kept.</param>
/// <param name="Dark">Loads that are not fed.</param>
/// <param name="Over">Current above a limit, over all nodes and states.</param>
/// <param name="Changed">Choices that differ from the last issue.</param>
/// <param name="Earths">Supplies that sound hangs on, and once more each that fixtures hang on as well.</param>
/// <param name="Use">Worst utilisation above what is comfortable, per mille.</param>
/// <param name="Spread">Largest leg less the smallest, over all three-phase nodes, each in its worst state.</param>
/// <param name="Distance">To be bridged by leads.</param>
internal sealed record CircuitScore(int Broken, int Dark, long Over, int Changed, int Earths, int Use, long Spread, long Distance)
    : IComparable<CircuitScore>
{
    /// <summary>Up to half of a rating is as good as nothing: below that, short leads matter more. Common practice, no source.</summary>
    public const int Comfortable = 500;

    /// <summary>Scores an answer.</summary>
    /// <param name="problem">What was asked.</param>
    /// <param name="answer">For each wish the option that was taken; null for none.</param>
    public static CircuitScore Of(CircuitProblem problem, IReadOnlyList<CircuitOption?> answer)
    {
        var taken = problem.Wishes.Select((wish, index) => (Wish: wish, Option: answer[index])).ToList();
        var carried = Carried(problem, taken);
        return new CircuitScore(
            taken.Count(one => one.Wish.IsFixed && one.Option?.Keeps != true),
            taken.Where(one => one.Option is null).Sum(one => one.Wish.Units),
            carried.Sum(one => one.Limit is { } limit ? Math.Max(0L, one.Current - limit) : 0),
            taken.Count(one => one.Wish.Earlier is { } earlier && one.Option?.Group != earlier),
            EarthsOf(problem, taken),
            carried.Max(one => one.Limit is { } limit ? AboveComfort(one.Current, limit) : 0),
            SpreadOf(problem, taken),
            taken.Sum(one => (long)(one.Option?.Distance ?? 0)));
    }

    /// <summary>How far a current is above what is comfortable, per mille of the limit, rounded up.</summary>
    public static int AboveComfort(long current, int limit) =>
        limit > 0 ? (int)Math.Max(0, (((1000 * current) + limit - 1) / limit) - Comfortable) : 0;

    /// <inheritdoc/>
    public int CompareTo(CircuitScore? other) => other is null ? 1 : InOrder.Zip(other.InOrder, (own, its) => own.CompareTo(its)).FirstOrDefault(step => step != 0);

    private long[] InOrder => [Broken, Dark, Over, Changed, Earths, Use, Spread, Distance];

    // Every node and every outlet that is taken, in every state.
    private static List<(long Current, int? Limit)> Carried(CircuitProblem problem, List<(CircuitWish Wish, CircuitOption? Option)> taken)
    {
        var all = new List<(long Current, int? Limit)> { (0, null) };
        for (var state = 0; state < problem.States; state++)
        {
            all.AddRange(problem.Nodes.Select((node, index) => (On(problem, taken, index, state), node.Limit)));
            all.AddRange(taken.Where(one => one.Option is not null)
                .Select(one => ((long)one.Wish.Draws[state], problem.Groups[one.Option!.Group].Limit)));
        }

        return all;
    }

    private static long On(CircuitProblem problem, List<(CircuitWish Wish, CircuitOption? Option)> taken, int node, int state) =>
        problem.Nodes[node].Others[state]
            + taken.Where(one => one.Option is { } option && problem.Groups[option.Group].Nodes.Contains(node)).Sum(one => (long)one.Wish.Draws[state]);

    private static int EarthsOf(CircuitProblem problem, List<(CircuitWish Wish, CircuitOption? Option)> taken)
    {
        HashSet<int> Supplies(CircuitEarth earth) =>
            [.. taken.Where(one => one.Wish.Earth == earth && one.Option is not null).Select(one => problem.Groups[one.Option!.Group].Supply)];
        var sound = Supplies(CircuitEarth.Sound);
        return sound.Count + Supplies(CircuitEarth.Light).Count(sound.Contains);
    }

    private static long SpreadOf(CircuitProblem problem, List<(CircuitWish Wish, CircuitOption? Option)> taken) =>
        Enumerable.Range(0, problem.Nodes.Count)
            .Where(node => problem.Nodes[node].Balanced is not null)
            .GroupBy(node => problem.Nodes[node].Balanced)
            .Sum(legs => Enumerable.Range(0, problem.States).Max(state =>
                legs.Max(leg => On(problem, taken, leg, state)) - legs.Min(leg => On(problem, taken, leg, state))));
}
