using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Parts what a hang is made of into its frame, with what is fixed to that, and its boxes.</summary>
internal static class HangItems
{
    /// <summary>
    /// One by one. What is written first is the frame, unless it is known to be a loudspeaker; what follows it and is known to be none is fixed to it.
    /// </summary>
    public static (IReadOnlyList<CountedItem> Frame, IReadOnlyList<CountedItem> Boxes) Of(Stack hang, Stock stock)
    {
        List<CountedItem> items = [.. hang.Boxes.SelectMany(counted => Enumerable.Repeat(counted with { Count = 1 }, counted.Count))];
        var kinds = items.ConvertAll(item => stock.Find(item.Item));
        var frame = items.Count == 0 || kinds[0]?.Loudspeaker is not null ? 0 : 1 + kinds.Skip(1).TakeWhile(kind => kind is { Loudspeaker: null }).Count();
        return (items[..frame], items[frame..]);
    }
}
