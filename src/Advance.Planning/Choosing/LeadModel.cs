using Google.OrTools.Sat;

namespace Advance.Planning;

/// <summary>Leads for runs that want the same ones: how many runs of each class are made of which chain.</summary>
internal sealed class LeadModel
{
    private readonly IReadOnlyList<LeadClass> classes;
    private readonly AimedModel aimed;
    private readonly IntVar[][] made;
    private readonly IntVar[] unmade;
    private readonly List<IntVar> kept = [];

    /// <summary>A model.</summary>
    /// <param name="classes">The runs.</param>
    /// <param name="ready">How many there are of each kind, by id.</param>
    /// <param name="effort">At most so much work on each aim, in deterministic seconds of the solver.</param>
    /// <param name="areAllMade">Whether it is known that no run need go without leads: then none may, and that aim is not searched for.</param>
    public LeadModel(IReadOnlyList<LeadClass> classes, IReadOnlyDictionary<string, int> ready, double effort, bool areAllMade = false)
    {
        this.classes = classes;
        aimed = new AimedModel(effort);
        made = [.. classes.Select((alike, number) => alike.Chains.Select((_, index) => Count(alike, $"{number} of {index}")).ToArray())];
        unmade = [.. classes.Select((alike, number) => aimed.Model.NewIntVar(0, areAllMade ? 0 : alike.Wishes.Count, $"{number} unmade"))];
        for (var number = 0; number < classes.Count; number++)
        {
            aimed.Model.Add(LinearExpr.Sum(made[number].Append(unmade[number])) == classes[number].Wishes.Count);
            Keep(number);
        }

        Limit(ready);
        Aim(areAllMade);
    }

    /// <summary>Whether nothing better exists; after solving.</summary>
    public bool IsProven { get; private set; }

    /// <summary>Starts the search from a choice that is possible.</summary>
    public void Hint(IEnumerable<(LeadWish Wish, LeadChain? Chain)> chosen)
    {
        var byWish = chosen.ToDictionary(choice => choice.Wish.Address, choice => choice.Chain);
        for (var number = 0; number < classes.Count; number++)
        {
            var alike = classes[number];
            var chains = alike.Wishes.Select(wish => byWish[wish.Address]).ToList();
            for (var index = 0; index < alike.Chains.Count; index++)
            {
                aimed.Model.AddHint(made[number][index], chains.Count(chain => chain == alike.Chains[index]));
            }

            aimed.Model.AddHint(unmade[number], chains.Count(chain => chain is null));
        }
    }

    /// <summary>The chain of each run; null where no answer was found with that effort.</summary>
    public IReadOnlyList<(LeadWish Wish, LeadChain? Chain)>? Solve()
    {
        if (aimed.Solve() is not { } answer)
        {
            return null;
        }

        IsProven = answer.IsProven;
        return [.. classes.SelectMany((alike, number) => alike.GiveOut([.. made[number].Select(count => (int)answer.Of(count))]))];
    }

    private IntVar Count(LeadClass alike, string name) => aimed.Model.NewIntVar(0, alike.Wishes.Count, name);

    // What was made of a chain before and is again.
    private void Keep(int number)
    {
        var alike = classes[number];
        for (var index = 0; index < alike.Chains.Count; index++)
        {
            var before = alike.Kept(alike.Chains[index]);
            if (before > 0)
            {
                var again = aimed.Model.NewIntVar(0, before, $"{number} of {index} kept");
                aimed.Model.Add(again <= made[number][index]);
                kept.Add(again);
            }
        }
    }

    private void Limit(IReadOnlyDictionary<string, int> ready)
    {
        var uses = new SortedDictionary<string, (List<IntVar> Counts, List<long> Takes)>(StringComparer.Ordinal);
        for (var number = 0; number < classes.Count; number++)
        {
            for (var index = 0; index < made[number].Length; index++)
            {
                var chain = classes[number].Chains[index];
                foreach (var id in chain.Leads.Select(lead => lead.Kind.Id).Distinct(StringComparer.Ordinal).Where(ready.ContainsKey))
                {
                    uses.TryAdd(id, ([], []));
                    uses[id].Counts.Add(made[number][index]);
                    uses[id].Takes.Add(chain.Takes(id, classes[number].Own));
                }
            }
        }

        foreach (var (id, (counts, takes)) in uses)
        {
            aimed.Model.Add(LinearExpr.WeightedSum(counts, takes) <= ready[id]);
        }
    }

    private void Aim(bool areAllMade)
    {
        if (!areAllMade)
        {
            aimed.Minimise(LinearExpr.Sum(unmade));
        }

        if (kept.Count > 0)
        {
            aimed.Minimise(-LinearExpr.Sum(kept));
        }

        // One join beyond the policy outweighs all joins there can be. Where each run has as many joins whatever is chosen, there is nothing to search for.
        if (!areAllMade || classes.Any(alike => alike.Chains.Any(chain => chain.Joins != alike.Chains[0].Joins)))
        {
            var allJoins = classes.Sum(alike => alike.Wishes.Count) * LeadChains.MostLeads;
            aimed.Minimise(Total((alike, chain, _) => (Math.Max(0, chain.Joins - alike.MostJoins) * allJoins) + chain.Joins));
        }

        // In the largest unit that all chains are whole numbers of: small numbers are quickly searched.
        var unit = Math.Max(1, classes.SelectMany(alike => alike.Chains).Aggregate(0L, (unit, chain) => Common(unit, chain.Total)));
        aimed.Minimise(Total((_, chain, _) => chain.Total / unit));

        // Of equal choices, the better-placed chains, and leads for those whose address comes first.
        aimed.Minimise(Total((_, _, index) => index) + LinearExpr.WeightedSum(unmade, unmade.Select((_, number) => (long)(classes.Count - number))));
    }

    private static long Common(long one, long other) => other == 0 ? one : Common(other, one % other);

    private LinearExpr Total(Func<LeadClass, LeadChain, int, long> weight) =>
        LinearExpr.WeightedSum(
            made.SelectMany(counts => counts),
            classes.SelectMany(alike => alike.Chains.Select((chain, index) => weight(alike, chain, index))));
}
