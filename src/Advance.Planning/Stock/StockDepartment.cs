using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Naming;
using Advance.Domain.Stocks;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>Counts what the shop pulls: pieces in use, spares by policy, and what stands in for what is short.</summary>
public static class StockDepartment
{
    /// <summary>Chooses what is pulled. Every piece is on a line or is somebody else's.</summary>
    public static StockPlan Choose(IReadOnlyList<Piece> pieces, Domain.Stocks.Stock stock, Policies policies)
    {
        var ids = pieces.Where(piece => piece.IsPulled).Select(piece => piece.Item).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal);
        var counts = ids.Select(id => Count(id, pieces, stock, policies)).ToDictionary(count => count.Item, StringComparer.Ordinal);
        var standIns = StandIns.Find(counts, stock);
        foreach (var item in standIns.AllocatedTo.Where(item => !counts.ContainsKey(item)))
        {
            counts[item] = Count(item, pieces, stock, policies);
        }

        var lines = counts.Values.Select(count => LineOf(count, standIns)).ToList();
        lines.Sort(ByShelf);
        return new StockPlan(lines, [.. pieces.Where(piece => !piece.IsPulled)]);
    }

    private static ItemCount Count(string item, IReadOnlyList<Piece> pieces, Domain.Stocks.Stock stock, Policies policies)
    {
        var kind = stock.Find(item);
        var ofItem = pieces.Where(piece => piece.Item == item).ToList();
        var doubts = ofItem.Aggregate(Doubts.None, (sum, piece) => sum.With(Doubts.Of(piece.From.Doubt)));
        var need = new Figure<int>(ofItem.Count(piece => piece.IsPulled), doubts, Reason.Derived.It);
        var spare = SpareOf(kind, policies) is { } policy ? Spare(policy.Name, policy.Share, need) : Figure.Count(0);
        return new ItemCount(item, kind, need, spare, Ready(kind), [.. ofItem.Where(piece => piece.IsPulled)]);
    }

    private static (string Name, Share Share)? SpareOf(Kind? kind, Policies policies) => kind?.Role switch
    {
        Role.Microphone => ("spare-mics", policies.SpareMics),
        Role.DirectBox => ("spare-di", policies.SpareDirectBoxes),
        Role.Stand => ("spare-stands", policies.SpareStands),
        _ => null,
    };

    private static Figure<int> Spare(string policy, Share share, Figure<int> need) =>
        Sum.Of("spares", "s = max(m, ⌈p · n / 100⌉)", Publication.CommonPractice)
            .Put("m", Figure.Policy(policy, share.AtLeast))
            .Put("p", Figure.Policy(policy, share.Percent))
            .Put("n", need)
            .Gives(Spares.Of);

    private static Figure<int> Ready(Kind? kind) => kind is null
        ? new Figure<int>(null, Doubts.None, Reason.Derived.It)
        : Sum.Of("ready", "r = o - b", Publication.Arithmetic)
            .Put("o", Figure.From(kind.Owned))
            .Put("b", new Figure<int>(kind.OutForRepair, Doubts.None, new Reason.Fixed(kind.At)))
            .Gives((owned, broken) => Math.Max(0, owned - broken));

    private static StockLine LineOf(ItemCount count, StandIns standIns)
    {
        var standingIn = standIns.For(count.Item);
        var covered = standIns.Of(count.Item);
        var total = Sum.Of("total", "t = n + s + i", Publication.Arithmetic)
            .Put("n", count.Need)
            .Put("s", count.Spare)
            .Put("i", Figure.Count(standingIn - covered.Sum(item => item.Count)))
            .Gives((need, spare, moved) => need + spare + moved);
        var missing = Sum.Of("short", "m = max(0, t - r)", Publication.Arithmetic)
            .Put("t", total)
            .Put("r", count.Ready)
            .Gives((wanted, ready) => Math.Max(0, wanted - ready));
        return new StockLine(
            Address.Of("stock") / count.Item, count.Item, count.Kind, count.Need, count.Spare, standingIn, total, count.Ready, covered, missing, count.Pieces);
    }

    private static int ByShelf(StockLine a, StockLine b)
    {
        var byDepartment = string.CompareOrdinal(a.Kind?.Department ?? "\uFFFF", b.Kind?.Department ?? "\uFFFF");
        if (byDepartment != 0)
        {
            return byDepartment;
        }

        var byShelf = Natural.Compare(a.Kind?.Shelf ?? "", b.Kind?.Shelf ?? "");
        return byShelf != 0 ? byShelf : Natural.Compare(a.Item, b.Item);
    }
}
