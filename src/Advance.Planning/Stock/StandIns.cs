using Advance.Domain.Facts;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Which pieces of one kind stand in for missing ones of another: the best substitute first, never one that is wanted itself.</summary>
internal sealed class StandIns
{
    private readonly List<(string Missing, CountedItem By)> chosen = [];

    /// <summary>Kinds that stand in for others.</summary>
    public IEnumerable<string> AllocatedTo => chosen.Select(choice => choice.By.Item).Distinct(StringComparer.Ordinal);

    /// <summary>Chooses substitutes for everything that is short, in the order of the ids.</summary>
    public static StandIns Find(IReadOnlyDictionary<string, ItemCount> counts, Domain.Stocks.Stock stock)
    {
        var found = new StandIns();
        foreach (var count in counts.Values.OrderBy(count => count.Item, StringComparer.Ordinal))
        {
            var missing = count.Missing ?? 0;
            foreach (var substitute in count.Kind?.Substitutes ?? [])
            {
                var taken = Math.Min(missing, found.LeftOver(substitute, counts, stock));
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

    private int LeftOver(string item, IReadOnlyDictionary<string, ItemCount> counts, Domain.Stocks.Stock stock)
    {
        var left = counts.TryGetValue(item, out var count) ? -count.Missing : Owned(stock.Find(item));
        return Math.Max(0, (left ?? 0) - For(item));
    }

    private static int? Owned(Kind? kind) => kind is not null && kind.Owned.Is(out var owned) ? owned - kind.OutForRepair : null;
}
