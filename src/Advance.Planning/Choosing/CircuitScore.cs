namespace Advance.Planning;

/// <summary>
/// How good an answer is: aims in order, smaller is better, the first outweighs all that follow. Feeding everything comes before ratings, so
/// that an overload is one finding that names the supply and not a dozen loads without an outlet; where both can be had, both are.
/// </summary>
/// <param name="Broken">Choices fixed by hand that were not kept.</param>
/// <param name="Dark">Loads that are not fed.</param>
/// <param name="Over">Current above a limit, over all nodes and states.</param>
/// <param name="Strain">Above what residual-current devices, breakers at switching on and boxes of breakers bear, per mille, over all of them.</param>
/// <param name="Changed">Choices that differ from the last issue.</param>
/// <param name="Earths">Supplies that sound hangs on, and once more each that fixtures hang on as well.</param>
/// <param name="Use">Worst utilisation above what is comfortable, per mille.</param>
/// <param name="Spread">Largest leg less the smallest, over all three-phase nodes, each in its worst state.</param>
/// <param name="Distance">To be bridged by leads.</param>
/// <param name="Opened">Outlets in use.</param>
internal readonly record struct CircuitScore(
    int Broken, int Dark, long Over, long Strain, int Changed, int Earths, int Use, long Spread, long Distance, int Opened) : IComparable<CircuitScore>
{
    /// <summary>Up to half of a rating is as good as nothing: below that, short leads matter more. Common practice, no source.</summary>
    public const int Comfortable = 500;

    /// <summary>Scores an answer.</summary>
    /// <param name="problem">What was asked.</param>
    /// <param name="answer">For each wish the option that was taken; null for none.</param>
    public static CircuitScore Of(CircuitProblem problem, IReadOnlyList<CircuitOption?> answer)
    {
        var taken = problem.Wishes.Select((wish, index) => (Wish: wish, Option: answer[index])).ToList();
        var fed = taken.Where(one => one.Option is not null).Select(one => (one.Wish, Group: problem.Groups[one.Option!.Group])).ToList();
        var carried = Carried(problem, fed);
        return new CircuitScore(
            taken.Count(one => one.Wish.IsFixed && one.Option?.Keeps != true),
            taken.Where(one => one.Option is null).Sum(one => one.Wish.Units),
            carried.Sum(one => one.Limit is { } limit ? Math.Max(0L, one.Current - limit) : 0),
            StrainOf(problem, fed),
            taken.Count(one => one.Wish.Earlier is { } earlier && one.Option?.Group != earlier),
            EarthsOf(fed),
            carried.Max(one => one.Limit is { } limit ? AboveComfort(one.Current, limit) : 0),
            SpreadOf(problem, fed),
            taken.Sum(one => (long)(one.Option?.Distance ?? 0)),
            fed.Count);
    }

    /// <summary>How far a current is above what is comfortable, per mille of the limit, rounded up.</summary>
    public static int AboveComfort(long current, int limit) =>
        limit > 0 ? (int)Math.Min(int.MaxValue, Math.Max(0, (((1000 * current) + limit - 1) / limit) - Comfortable)) : 0;

    /// <summary>Whether all aims up to the last issue are met whole.</summary>
    public bool IsWhole => (Broken, Dark, Over, Strain, Changed) == (0, 0, 0, 0, 0);

    /// <summary>Compares the aims that come before utilisation.</summary>
    public int CompareHead(CircuitScore other)
    {
        var step = Broken.CompareTo(other.Broken);
        step = step != 0 ? step : Dark.CompareTo(other.Dark);
        step = step != 0 ? step : Over.CompareTo(other.Over);
        step = step != 0 ? step : Strain.CompareTo(other.Strain);
        step = step != 0 ? step : Changed.CompareTo(other.Changed);
        return step != 0 ? step : Earths.CompareTo(other.Earths);
    }

    /// <inheritdoc/>
    public int CompareTo(CircuitScore other)
    {
        var step = CompareHead(other);
        step = step != 0 ? step : Use.CompareTo(other.Use);
        step = step != 0 ? step : Spread.CompareTo(other.Spread);
        step = step != 0 ? step : Distance.CompareTo(other.Distance);
        return step != 0 ? step : Opened.CompareTo(other.Opened);
    }

    // Every node and every outlet that is taken, in every state.
    private static List<(long Current, int? Limit)> Carried(CircuitProblem problem, List<(CircuitWish Wish, CircuitGroup Group)> fed)
    {
        var all = new List<(long Current, int? Limit)> { (0, null) };
        for (var state = 0; state < problem.States; state++)
        {
            all.AddRange(problem.Nodes.Select((node, index) => (On(problem, fed, index, state), node.Limit)));
            all.AddRange(fed.Select(one => ((long)one.Wish.Draws[state], one.Group.Limit)));
        }

        return all;
    }

    private static long On(CircuitProblem problem, List<(CircuitWish Wish, CircuitGroup Group)> fed, int node, int state) =>
        problem.Nodes[node].Others[state] + fed.Where(one => one.Group.Nodes.Contains(node)).Sum(one => (long)one.Wish.Draws[state]);

    private static long StrainOf(CircuitProblem problem, List<(CircuitWish Wish, CircuitGroup Group)> fed) =>
        fed.Sum(one => CircuitStrain.On(one.Group, one.Wish))
        + problem.Guards.Select((guard, index) => CircuitStrain.Above(
            fed.Where(one => one.Group.Guards.Contains(index)).Sum(one => (long)(guard.IsLeakage ? one.Wish.Leakage : one.Wish.Inrush)), guard.Limit)).Sum()
        + fed.Where(one => one.Group is { Box: not null, Limit: > 0 }).GroupBy(one => one.Group.Box).Sum(box => Math.Max(
            0, box.Sum(one => CircuitStrain.Loading(one.Group, one.Wish)) - CircuitStrain.Bears(box.Count())));

    private static int EarthsOf(List<(CircuitWish Wish, CircuitGroup Group)> fed)
    {
        HashSet<int> Supplies(CircuitEarth earth) => [.. fed.Where(one => one.Wish.Earth == earth).Select(one => one.Group.Supply)];
        var sound = Supplies(CircuitEarth.Sound);
        return sound.Count + Supplies(CircuitEarth.Light).Count(sound.Contains);
    }

    private static long SpreadOf(CircuitProblem problem, List<(CircuitWish Wish, CircuitGroup Group)> fed) =>
        Enumerable.Range(0, problem.Nodes.Count)
            .Where(node => problem.Nodes[node].Balanced is not null)
            .GroupBy(node => problem.Nodes[node].Balanced)
            .Sum(legs => Enumerable.Range(0, problem.States).Max(state =>
                legs.Max(leg => On(problem, fed, leg, state)) - legs.Min(leg => On(problem, fed, leg, state))));
}
