namespace Advance.Planning;

/// <summary>Wishes that the same chains make, so that only how many of each chain is a question.</summary>
/// <param name="Wishes">In the order of their addresses; at least one.</param>
/// <param name="Chains">What makes any of them, best first.</param>
internal sealed record LeadClass(IReadOnlyList<LeadWish> Wishes, IReadOnlyList<LeadChain> Chains)
{
    // Beyond so many ways to make a run there is one as good among them.
    private const int MostChains = 400;

    /// <summary>Puts wishes together, in the order of their first addresses.</summary>
    public static IReadOnlyList<LeadClass> Of(IEnumerable<LeadWish> wishes) =>
    [
        .. wishes.OrderBy(wish => wish.Address).GroupBy(wish => wish.Class).Select(alike => new LeadClass([.. alike], ChainsOf([.. alike]))),
    ];

    /// <summary>Id of the lead that comes along with each of the units; null where none does.</summary>
    public string? Own => Wishes[0].Own;

    /// <summary>The most joins by policy.</summary>
    public int MostJoins => Wishes[0].MostJoins;

    /// <summary>The same wishes, made of chains that no other has fewer joins than.</summary>
    public LeadClass WithFewestJoins() => this with { Chains = [.. Chains.TakeWhile(chain => chain.Joins == Chains[0].Joins)] };

    /// <summary>How many were made of this chain in the last issue.</summary>
    public int Kept(LeadChain chain) => Wishes.Count(wish => wish.Kept == chain);

    /// <summary>Gives out so many of each chain: first to those who had it, then in order; what is left over gets none.</summary>
    public IEnumerable<(LeadWish Wish, LeadChain? Chain)> GiveOut(IReadOnlyList<int> counts)
    {
        var left = counts.ToArray();
        var place = Chains.Select((chain, index) => (chain, index)).ToDictionary(pair => pair.chain, pair => pair.index);
        var given = new LeadChain?[Wishes.Count];
        for (var index = 0; index < Wishes.Count; index++)
        {
            var kept = Wishes[index].Kept is { } chain ? place[chain] : -1;
            if (kept >= 0 && left[kept] > 0)
            {
                left[kept]--;
                given[index] = Chains[kept];
            }
        }

        for (var index = 0; index < Wishes.Count; index++)
        {
            var next = given[index] is null ? Array.FindIndex(left, count => count > 0) : -1;
            if (next >= 0)
            {
                left[next]--;
                given[index] = Chains[next];
            }
        }

        return Wishes.Zip(given);
    }

    // Nobody lays a chain of many more leads than it takes: one more than the fewest that reach, or than the policy wants.
    private static List<LeadChain> ChainsOf(IReadOnlyList<LeadWish> wishes)
    {
        var reaching = wishes[0].Chains.Reaching(wishes[0].Needed);
        var mostJoins = Math.Max(wishes[0].MostJoins, reaching.Count > 0 ? reaching[0].Joins : 0) + 1;
        return [.. reaching.TakeWhile(chain => chain.Joins <= mostJoins).Take(MostChains).Concat(wishes.Select(wish => wish.Kept).OfType<LeadChain>()).Distinct()];
    }
}
