namespace Advance.Planning;

/// <summary>
/// A first answer: what is fixed and what was issued first, then the largest load to the outlet whose way up it fills least. Where a wish finds
/// all outlets that fit it taken, others move on along a chain of outlets until one is free.
/// </summary>
internal static class CircuitGreedy
{
    /// <summary>Builds it.</summary>
    /// <param name="problem">What is asked.</param>
    /// <param name="leeway">Which options may be taken; all others only by what would stay dark.</param>
    /// <param name="order">In which order wishes come where nothing else decides.</param>
    /// <param name="target">What utilisation above comfort nothing need be below.</param>
    public static CircuitLoading Build(CircuitProblem problem, CircuitLeeway leeway, IReadOnlyList<int> order, int target)
    {
        var loading = new CircuitLoading(problem, target);
        var all = CircuitLeeway.All(problem);
        foreach (var wish in order)
        {
            if (Best(problem, loading, leeway, wish) is var rank and >= 0)
            {
                loading.Put(wish, rank);
            }
            else if (!Shift(problem, loading, leeway, wish))
            {
                Shift(problem, loading, all, wish);
            }
        }

        return loading;
    }

    /// <summary>By what a wish is, not by where it stands: fixed, issued before, the largest first.</summary>
    public static IReadOnlyList<int> Order(CircuitProblem problem) =>
    [
        .. Enumerable.Range(0, problem.Wishes.Count)
            .Select(index => (index, wish: problem.Wishes[index]))
            .OrderBy(one => one.wish.IsFixed ? 0 : 1)
            .ThenBy(one => one.wish.Earlier is null ? 1 : 0)
            .ThenByDescending(one => (long)one.wish.Most * Legs(problem, one.wish))
            .ThenByDescending(one => one.wish.Draws.Sum(draw => (long)draw))
            .ThenBy(one => one.wish.Earth)
            .ThenByDescending(one => one.wish.Units)
            .ThenBy(one => string.Join(' ', one.wish.Draws), StringComparer.Ordinal)
            .ThenBy(one => string.Join(' ', one.wish.Options.Select(option => FormattableString.Invariant($"{option.Group}:{option.Distance}:{option.Keeps}"))), StringComparer.Ordinal)
            .ThenBy(one => one.wish.Earlier)
            .ThenBy(one => one.wish.Leakage)
            .ThenBy(one => one.wish.Inrush)
            .Select(one => one.index),
    ];

    private static int Legs(CircuitProblem problem, CircuitWish wish) => wish.Options.Select(option => problem.Groups[option.Group].Nodes.Count).DefaultIfEmpty().Min();

    // Which supplies meet is the leeway's business: step by step, the first supply would be filled to the brim before the next is begun.
    private static int Best(CircuitProblem problem, CircuitLoading loading, CircuitLeeway leeway, int wish)
    {
        var options = problem.Wishes[wish].Options;
        var best = -1;
        (CircuitScore Score, long Fill) least = default;
        for (var rank = 0; rank < options.Count; rank++)
        {
            if (!leeway.Allowed[wish][rank] || loading.Free(options[rank].Group) <= 0)
            {
                continue;
            }

            loading.Put(wish, rank);
            var (score, fill) = (loading.Score, loading.FillOf(wish));
            loading.Lift(wish);
            var step = best < 0 ? -1 : score.CompareHead(least.Score with { Earths = score.Earths });
            step = step != 0 ? step : fill.CompareTo(least.Fill);
            if (step < 0 || (step == 0 && options[rank].Distance < options[best].Distance))
            {
                (best, least) = (rank, (score, fill));
            }
        }

        return best;
    }

    // Breadth first over groups: who is there may go on to another of its own options.
    private static bool Shift(CircuitProblem problem, CircuitLoading loading, CircuitLeeway leeway, int wish)
    {
        var from = new Dictionary<int, (int Wish, int Rank)>();
        var queue = new Queue<int>();
        void Reach(int mover)
        {
            var options = problem.Wishes[mover].Options;
            for (var rank = 0; rank < options.Count; rank++)
            {
                if (leeway.Allowed[mover][rank] && problem.Groups[options[rank].Group].Slots > 0 && from.TryAdd(options[rank].Group, (mover, rank)))
                {
                    queue.Enqueue(options[rank].Group);
                }
            }
        }

        Reach(wish);
        while (queue.TryDequeue(out var group))
        {
            if (loading.Free(group) > 0)
            {
                Move(loading, from, group, wish);
                return true;
            }

            for (var other = 0; other < problem.Wishes.Count; other++)
            {
                if (other != wish && loading.GroupOf(other) == group && !(problem.Wishes[other].IsFixed && problem.Wishes[other].Options[loading.Of(other)].Keeps))
                {
                    Reach(other);
                }
            }
        }

        return false;
    }

    private static void Move(CircuitLoading loading, Dictionary<int, (int Wish, int Rank)> from, int group, int wish)
    {
        while (true)
        {
            var (mover, rank) = from[group];
            var before = loading.GroupOf(mover);
            loading.Lift(mover);
            loading.Put(mover, rank);
            if (mover == wish)
            {
                return;
            }

            group = before;
        }
    }
}
