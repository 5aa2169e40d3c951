using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Counts what is wanted of the desks. Every desk has all lines; which of them sends the mixes is not said.</summary>
internal static class DeskCount
{
    /// <summary>The use of a desk.</summary>
    public static DeskUse Of(Device desk, Stock stock, IReadOnlyList<PatchLine> lines, IReadOnlyList<PatchReturn> returns)
    {
        var kind = desk.Item.Is(out var id) ? stock.Find(id) : null;
        return new DeskUse(
            Address.Of("patch") / desk.Name,
            desk.Name,
            desk.At,
            Fact(desk, kind?.Channels),
            Figure.Count(lines.Select(line => line.Channel).DefaultIfEmpty().Max()),
            Fact(desk, kind?.Buses),
            Figure.Count(returns.Select(mix => mix.Number).DefaultIfEmpty().Max()));
    }

    private static Figure<int> Fact(Device desk, Given<int>? fact)
    {
        var restsOn = Doubts.Of(desk.Item.Doubt);
        return fact is { } given
            ? Figure.From(given) with { RestsOn = restsOn.With(Doubts.Of(given.Doubt)) }
            : new Figure<int>(null, restsOn, new Reason.Fixed(desk.Item.At));
    }
}
