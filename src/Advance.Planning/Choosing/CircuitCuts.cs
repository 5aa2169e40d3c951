namespace Advance.Planning;

/// <summary>
/// What utilisation no answer is below. Put a price on each node: every wish pays at least for its cheapest way up, and all of them together
/// pay no more than the worst utilisation times the price of all limits. That holds for any prices; the best are those of a linear program.
/// Loads are taken as if they could be divided, so that with few large ones it is far below the truth.
/// </summary>
internal sealed class CircuitCuts
{
    private const long Scale = 1 << 24;

    private readonly CircuitProblem problem;
    private readonly CircuitLeeway leeway;
    private readonly int[][] paths;
    private readonly int[] supplies;
    private readonly int[] limits;
    private readonly int[] roots;
    private readonly List<CircuitClass> classes;

    /// <param name="problem">What is asked.</param>
    /// <param name="leeway">Which options may be taken at all.</param>
    public CircuitCuts(CircuitProblem problem, CircuitLeeway leeway)
    {
        (this.problem, this.leeway) = (problem, leeway);
        limits = [.. problem.Nodes.Select(node => node.Limit is { } limit and > 0 ? limit : 0)];
        int[][] all = [.. problem.Groups.Select(group => group.Nodes.Where(node => limits[node] > 0).Order().ToArray())];
        var ways = problem.Groups.Select((group, index) => (group.Supply, index)).GroupBy(one => FormattableString.Invariant($"{one.Supply}: ") + string.Join(' ', all[one.index])).ToList();
        paths = [.. ways.Select(way => all[way.First().index])];
        supplies = [.. ways.Select(way => way.First().Supply)];
        var wayOf = ways.SelectMany((way, index) => way.Select(one => (one.index, Way: index))).ToDictionary(one => one.index, one => one.Way);
        classes =
        [
            .. problem.Wishes
                .Select((wish, index) => (wish, ways: wish.Options.Where((_, rank) => leeway.Allowed[index][rank]).Select(option => wayOf[option.Group]).Distinct().Order().ToArray()))
                .Where(one => one.ways.Length > 0)
                .GroupBy(one => (one.wish.Earth, string.Join(' ', one.ways)))
                .Select(same => new CircuitClass(same.First().ways, same.Key.Earth, [.. Enumerable.Range(0, problem.States).Select(state => same.Sum(one => (long)one.wish.Draws[state]))])),
        ];
        roots = Roots();
    }

    /// <summary>Whether every wish that has a way keeps one.</summary>
    public bool IsForAll(IReadOnlySet<int>? sound, bool areLightsApart) => Left(sound, areLightsApart).TrueForAll(one => one.Ways.Length > 0);

    /// <summary>The least worst utilisation above comfort, per mille, of services by themselves.</summary>
    public int Quick(IReadOnlySet<int>? sound, bool areLightsApart)
    {
        var left = Left(sound, areLightsApart);
        double[] weights = [.. limits.Select((_, node) => roots.Contains(node) ? 1.0 : 0.0)];
        return Above(Enumerable.Range(0, problem.States).Select(state => Priced(left, state, weights)).DefaultIfEmpty().Max());
    }

    /// <summary>The least worst utilisation above comfort, per mille.</summary>
    /// <param name="sound">The supplies that sound may hang on; null for any.</param>
    /// <param name="areLightsApart">Whether lights are to be off those.</param>
    public int Least(IReadOnlySet<int>? sound, bool areLightsApart)
    {
        var left = Left(sound, areLightsApart);
        var own = sound is null ? leeway : leeway.On(problem, sound, areLightsApart);
        var most = Math.Max(Single(own), Carried());
        foreach (var state in Enumerable.Range(0, problem.States).Where(state => !IsLess(left, state)))
        {
            most = CircuitPrice.Of([.. left.Where(one => one.Ways.Length > 0)], paths, limits, node => problem.Nodes[node].Others[state], state) is { } prices
                ? Math.Max(most, Priced(left, state, prices))
                : most;
        }

        return Math.Max(Math.Max(Above(most), Quick(sound, areLightsApart)), CircuitSockets.Least(problem, own));
    }

    private static int Above(long use) => (int)Math.Clamp(use - CircuitScore.Comfortable, 0, int.MaxValue);

    private static long Share(long current, int limit) => ((1000 * current) + limit - 1) / limit;

    // One leg of a supply each: nodes that more than half of the groups share that share most.
    private int[] Roots()
    {
        var shares = new int[limits.Length];
        foreach (var node in problem.Groups.SelectMany(group => group.Nodes))
        {
            shares[node]++;
        }

        return
        [
            .. problem.Groups.GroupBy(group => group.Supply).SelectMany(supply =>
            {
                var nodes = supply.SelectMany(group => group.Nodes).Distinct().Where(node => limits[node] > 0).ToList();
                var most = nodes.Select(node => shares[node]).DefaultIfEmpty().Max();
                return nodes.Where(node => 2 * shares[node] > most);
            }).Distinct(),
        ];
    }

    private List<CircuitClass> Left(IReadOnlySet<int>? sound, bool areLightsApart) => sound is null ? classes :
    [
        .. classes.Select(one => one.Earth switch
        {
            CircuitEarth.Sound => one with { Ways = [.. one.Ways.Where(way => sound.Contains(supplies[way]))] },
            CircuitEarth.Light when areLightsApart => one with { Ways = [.. one.Ways.Where(way => !sound.Contains(supplies[way]))] },
            _ => one,
        }),
    ];

    // A state in which nothing draws more than in another need not be looked at; of states alike the first is.
    private bool IsLess(List<CircuitClass> left, int state) => Enumerable.Range(0, problem.States).Any(other => other != state
        && left.TrueForAll(one => one.Draws[state] <= one.Draws[other])
        && problem.Nodes.All(node => node.Others[state] <= node.Others[other])
        && (other < state || left.Exists(one => one.Draws[state] < one.Draws[other]) || problem.Nodes.Any(node => node.Others[state] < node.Others[other])));

    // Each wish by itself on the best outlet it may have, with what is there already.
    private long Single(CircuitLeeway own) => problem.Wishes
        .Select((wish, index) => wish.Options.Where((_, rank) => own.Allowed[index][rank]).Select(option => Single(wish, problem.Groups[option.Group])).DefaultIfEmpty().Min())
        .DefaultIfEmpty().Max();

    private long Single(CircuitWish wish, CircuitGroup group)
    {
        var most = group.Limit is { } limit and > 0 ? Share(wish.Most, limit) : 0;
        foreach (var node in group.Nodes.Where(node => limits[node] > 0))
        {
            for (var state = 0; state < problem.States; state++)
            {
                most = Math.Max(most, Share(problem.Nodes[node].Others[state] + (long)wish.Draws[state], limits[node]));
            }
        }

        return most;
    }

    private long Carried() => problem.Nodes
        .Select((node, index) => limits[index] > 0 ? Share(node.Others.DefaultIfEmpty().Max(), limits[index]) : 0).DefaultIfEmpty().Max();

    // Prices are made whole first, so that what comes out is a bound to the last digit.
    private long Priced(List<CircuitClass> left, int state, double[] given)
    {
        var most = given.DefaultIfEmpty().Max();
        if (most <= 0)
        {
            return 0;
        }

        long[] prices = [.. given.Select(price => (long)(Scale * (price / most)))];
        var (paid, had) = ((Int128)0, (Int128)0);
        for (var node = 0; node < prices.Length; node++)
        {
            paid += (Int128)prices[node] * (limits[node] > 0 ? problem.Nodes[node].Others[state] : 0);
            had += (Int128)prices[node] * limits[node];
        }

        foreach (var one in left.Where(one => one.Ways.Length > 0))
        {
            paid += (Int128)one.Ways.Min(way => paths[way].Sum(node => prices[node])) * one.Draws[state];
        }

        return had > 0 ? (long)Int128.Min(((1000 * paid) + had - 1) / had, int.MaxValue) : 0;
    }
}
