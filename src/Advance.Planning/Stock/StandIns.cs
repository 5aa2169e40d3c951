using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>Which pieces of one kind stand in for missing ones of another: the best substitute first, never one that is wanted itself.</summary>
internal sealed class StandIns
{
    private readonly List<(string Missing, CountedItem By)> chosen = [];

    /// <summary>Chooses substitutes for everything that is short, in the order of the ids.</summary>
    public static StandIns Find(IReadOnlyDictionary<string, ItemCount> counts)
    {
        var found = new StandIns();
        foreach (var count in counts.Values.OrderBy(count => count.Item, StringComparer.Ordinal))
        {
            var missing = count.Missing ?? 0;
            foreach (var substitute in count.Kind?.Substitutes ?? [])
            {
                var taken = Math.Min(missing, found.LeftOver(substitute, counts));
                if (taken > 0)
                {
                    found.chosen.Add((count.Item, new CountedItem(taken, substitute)));
                    missing -= taken;
                }
            }
        }

        return found;
    }

    /// <summary>How many of this kind stand in for others.</summary>
    public int For(string item) => chosen.Where(choice => choice.By.Item == item).Sum(choice => choice.By.Count);

    /// <summary>What stands in for this kind.</summary>
    public IReadOnlyList<CountedItem> Of(string item) => [.. chosen.Where(choice => choice.Missing == item).Select(choice => choice.By)];

    private int LeftOver(string item, IReadOnlyDictionary<string, ItemCount> counts)
    {
        var left = counts.TryGetValue(item, out var count) ? -count.Missing ?? 0 : 0;
        return Math.Max(0, left - For(item));
    }
}
