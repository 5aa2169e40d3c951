namespace Advance.Planning;

/// <summary>
/// What utilisation of outlets by themselves cannot be helped: large loads share out the few large outlets, and one of them is left with a
/// small one. The least for which all wishes find outlets that are not fuller, each its own.
/// </summary>
internal static class CircuitSockets
{
    /// <summary>The least worst utilisation above comfort, per mille; 0 where not everything can be fed.</summary>
    public static int Least(CircuitProblem problem, CircuitLeeway leeway)
    {
        var ways = Ways(problem, leeway);
        List<int> uses = [.. ways.SelectMany(own => own).Select(way => way.Use).Distinct().Order()];
        if (uses.Count < 2 || !IsEnough(problem, ways, uses[^1]))
        {
            return uses.FirstOrDefault();
        }

        var (low, high) = (0, uses.Count - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = IsEnough(problem, ways, uses[middle]) ? (low, middle) : (middle + 1, high);
        }

        return uses[low];
    }

    /// <summary>Whether all wishes that have options find outlets, each its own.</summary>
    public static bool CanFeed(CircuitProblem problem, CircuitLeeway leeway) => IsEnough(problem, Ways(problem, leeway), int.MaxValue);

    private static List<(int Group, int Use)>[] Ways(CircuitProblem problem, CircuitLeeway leeway) =>
    [
        .. problem.Wishes.Select((wish, index) => wish.Options.Where((_, rank) => leeway.Allowed[index][rank]).Select(option => (option.Group, Use(problem, wish, option.Group))).ToList()),
    ];

    private static int Use(CircuitProblem problem, CircuitWish wish, int group) =>
        problem.Groups[group].Limit is { } limit ? CircuitScore.AboveComfort(wish.Most, limit) : 0;

    private static bool IsEnough(CircuitProblem problem, List<(int Group, int Use)>[] ways, int most)
    {
        var users = problem.Groups.Select(_ => new List<int>()).ToArray();
        var seen = new bool[users.Length];
        bool Feed(int wish)
        {
            foreach (var (group, use) in ways[wish])
            {
                if (use > most || seen[group])
                {
                    continue;
                }

                seen[group] = true;
                if (users[group].Count < problem.Groups[group].Slots)
                {
                    users[group].Add(wish);
                    return true;
                }

                for (var place = 0; place < users[group].Count; place++)
                {
                    if (Feed(users[group][place]))
                    {
                        users[group][place] = wish;
                        return true;
                    }
                }
            }

            return false;
        }

        for (var wish = 0; wish < ways.Length; wish++)
        {
            Array.Clear(seen);
            if (ways[wish].Count > 0 && !Feed(wish))
            {
                return false;
            }
        }

        return true;
    }
}
