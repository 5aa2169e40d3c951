namespace Advance.Planning;

/// <summary>What is left on the shelf while leads are picked.</summary>
internal sealed class LeadShelf
{
    private readonly Dictionary<string, int> left;

    /// <summary>A shelf.</summary>
    /// <param name="ready">How many there are, by id; a kind whose number nobody knows is not in it, and is never used up.</param>
    public LeadShelf(IReadOnlyDictionary<string, int> ready) => left = new(ready, StringComparer.Ordinal);

    /// <summary>Takes what a chain needs; false, and nothing taken, where something is used up.</summary>
    public bool Take(LeadChain chain, string? own)
    {
        var wanted = chain.Leads.Select(lead => lead.Kind.Id).Distinct(StringComparer.Ordinal).Where(left.ContainsKey).Select(id => (Id: id, Count: chain.Takes(id, own))).ToList();
        if (wanted.Any(take => take.Count > left[take.Id]))
        {
            return false;
        }

        foreach (var (id, count) in wanted)
        {
            left[id] -= count;
        }

        return true;
    }
}
