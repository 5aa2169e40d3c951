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
    public static StockPlan Choose(IReadOnlyList<Piece> pieces, Stock stock, Policies policies)
    {
        // A substitute is counted like what it may stand in for; it comes on the list only when it does.
        var pulled = pieces.Where(piece => piece.IsPulled).Select(piece => piece.Item).ToHashSet(StringComparer.Ordinal);
        var counts = pulled.Concat(pulled.SelectMany(id => stock.Find(id)?.Substitutes ?? []))
            .Distinct(StringComparer.Ordinal)
            .ToDictionary(id => id, id => Count(id, pieces, stock, policies), StringComparer.Ordinal);
        var standIns = StandIns.Find(counts);
        var lines = counts.Values.Where(count => pulled.Contains(count.Item) || standIns.For(count.Item) > 0).Select(count => LineOf(count, standIns)).ToList();
        lines.Sort(ByShelf);
        return new StockPlan(lines, [.. pieces.Where(piece => !piece.IsPulled)]);
    }

    private static ItemCount Count(string item, IReadOnlyList<Piece> pieces, Stock stock, Policies policies)
    {
        var kind = stock.Find(item);
        var ofItem = pieces.Where(piece => piece.Item == item).ToList();
        var doubts = ofItem.Aggregate(Doubts.None, (sum, piece) => sum.With(Doubts.Of(piece.From.Doubt)));
        var need = new Figure<int>(ofItem.Count(piece => piece.IsPulled), doubts, Reason.Derived.It);
        var spare = SpareOf(kind, policies) is { } policy ? Spare(policy.Name, policy.Share, need) : Figure.Count(0);
        var hired = new Figure<int>(ofItem.Count(ExtrasDepartment.IsCover), doubts, Reason.Derived.It);
        return new ItemCount(item, kind, need, spare, Ready(kind), hired, [.. ofItem.Where(piece => piece.IsPulled)]);
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
        var missing = Sum.Of("short", "m = max(0, t - r - h)", Publication.Arithmetic)
            .Put("t", total)
            .Put("r", count.Ready)
            .Put("h", count.Hired)
            .Gives((wanted, ready, hired) => Math.Max(0, wanted - ready - hired));
        return new StockLine(
            Address.Of("stock") / count.Item, count.Item, count.Kind, count.Need, count.Spare, standingIn, total, count.Ready, covered, count.Hired, missing, count.Pieces);
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
