namespace Advance.Planning;

/// <summary>
/// Picks leads for all runs at once from what is on the shelf. In this order: as few runs without leads as can be, as few changes from the
/// last issue, as few joins beyond the policy, as few joins, as little left over. Where everybody can have what is best for them alone,
/// nothing better exists and nothing is searched; so what is added elsewhere changes nothing.
/// </summary>
internal static class LeadPicker
{
    /// <summary>Work on each aim at most, in deterministic seconds of the solver.</summary>
    public const double UsualEffort = 0.5;

    /// <summary>A chain for each wish, in the order of the wishes; null where there is none, or all are used up.</summary>
    /// <param name="wishes">The runs, each address once.</param>
    /// <param name="ready">How many there are, by id; a kind whose number nobody knows is not in it, and is never used up.</param>
    /// <param name="effort">Work on each aim at most.</param>
    public static IReadOnlyList<LeadChain?> Pick(IReadOnlyList<LeadWish> wishes, IReadOnlyDictionary<string, int> ready, double effort = UsualEffort)
    {
        var chosen = PickSideBySide([.. Groups(LeadClass.Of(wishes))], ready, effort)
            .SelectMany(group => group)
            .ToDictionary(choice => choice.Wish.Address, choice => choice.Chain);
        return [.. wishes.Select(wish => chosen[wish.Address])];
    }

    // Groups take nothing off each other's shelves, so that they need not wait for each other.
    private static IReadOnlyList<(LeadWish Wish, LeadChain? Chain)>[] PickSideBySide(
        IReadOnlyList<IReadOnlyList<LeadClass>> groups, IReadOnlyDictionary<string, int> ready, double effort)
    {
        var picked = new IReadOnlyList<(LeadWish Wish, LeadChain? Chain)>[groups.Count];
        Parallel.For(0, groups.Count, index => picked[index] = PickTogether(groups[index], ready, effort));
        return picked;
    }

    // Classes that want the same kinds, however indirectly, stand in one group.
    private static IEnumerable<IReadOnlyList<LeadClass>> Groups(IReadOnlyList<LeadClass> classes)
    {
        var left = classes.ToList();
        while (left.Count > 0)
        {
            var group = new List<LeadClass> { left[0] };
            var kinds = Kinds(left[0]).ToHashSet(StringComparer.Ordinal);
            left.RemoveAt(0);
            while (left.FindIndex(alike => Kinds(alike).Any(kinds.Contains)) is >= 0 and var next)
            {
                group.Add(left[next]);
                kinds.UnionWith(Kinds(left[next]));
                left.RemoveAt(next);
            }

            yield return group;
        }
    }

    private static IEnumerable<string> Kinds(LeadClass alike) => alike.Chains.SelectMany(chain => chain.Leads).Select(lead => lead.Kind.Id);

    private static IReadOnlyList<(LeadWish Wish, LeadChain? Chain)> PickTogether(
        IReadOnlyList<LeadClass> group, IReadOnlyDictionary<string, int> ready, double effort)
    {
        var wishes = group.SelectMany(alike => alike.Wishes).ToList();
        var shelf = new LeadShelf(ready);
        if (wishes.All(wish => wish.Preferred is not { } preferred || shelf.Take(preferred, wish.Own)))
        {
            return [.. wishes.Select(wish => (wish, wish.Preferred))];
        }

        var greedy = PickOneByOne(group, ready);
        var areAllMade = greedy.TrueForAll(choice => choice.Chain is not null);
        var found = areAllMade && wishes.TrueForAll(wish => wish.Earlier is null) ? PickFewestJoins(group, ready, effort) : null;
        found ??= PickOfAll(group, ready, effort, greedy, areAllMade);
        return found is not null && LeadScore.Of(found).CompareTo(LeadScore.Of(greedy)) <= 0 ? found : greedy;
    }

    // Where no run needs more joins than if it were alone, the best choice is among those in which none has more: a small part of all.
    private static IReadOnlyList<(LeadWish Wish, LeadChain? Chain)>? PickFewestJoins(
        IReadOnlyList<LeadClass> group, IReadOnlyDictionary<string, int> ready, double effort) =>
        new LeadModel([.. group.Select(alike => alike.WithFewestJoins())], ready, effort, areAllMade: true).Solve();

    private static IReadOnlyList<(LeadWish Wish, LeadChain? Chain)>? PickOfAll(
        IReadOnlyList<LeadClass> group, IReadOnlyDictionary<string, int> ready, double effort, IEnumerable<(LeadWish Wish, LeadChain? Chain)> greedy, bool areAllMade)
    {
        var model = new LeadModel(group, ready, effort, areAllMade);
        model.Hint(greedy);
        return model.Solve();
    }

    // Whoever can have what is best for them has it, the longest first; then the rest are made of what is left.
    private static List<(LeadWish Wish, LeadChain? Chain)> PickOneByOne(IReadOnlyList<LeadClass> group, IReadOnlyDictionary<string, int> ready)
    {
        var shelf = new LeadShelf(ready);
        var wishes = group.SelectMany(alike => alike.Wishes.Select(wish => (Wish: wish, Class: alike)))
            .OrderBy(one => one.Wish.Kept is null)
            .ThenByDescending(one => one.Wish.Needed)
            .ThenBy(one => one.Wish.Address)
            .ToList();
        var chosen = wishes.ToDictionary(one => one.Wish.Address, one => one.Wish.Preferred is { } best && shelf.Take(best, one.Wish.Own) ? best : null);
        foreach (var (wish, alike) in wishes.Where(one => chosen[one.Wish.Address] is null))
        {
            chosen[wish.Address] = alike.Chains.FirstOrDefault(chain => shelf.Take(chain, wish.Own));
        }

        return [.. wishes.Select(one => (one.Wish, chosen[one.Wish.Address]))];
    }
}
