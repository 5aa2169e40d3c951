using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Naming;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Counts what the shop pulls: pieces in use, spares by policy, what stands in for what is short, and the cases for all of it.</summary>
public static class StockDepartment
{
    /// <summary>Chooses what is pulled. Every piece is on a line or is somebody else's.</summary>
    public static StockPlan Choose(Gig gig, IReadOnlyList<Piece> pieces, Stock stock, Policies policies)
    {
        // A substitute is counted like what it may stand in for; it comes on the list only when it does.
        var pulled = pieces.Where(piece => piece.IsPulled).Select(piece => piece.Item).ToHashSet(StringComparer.Ordinal);
        var rig = Need([.. pieces.Where(piece => piece.Kind?.Role == Role.Fixture)]);
        var counts = pulled.Concat(pulled.SelectMany(id => stock.Find(id)?.Substitutes ?? []))
            .Distinct(StringComparer.Ordinal)
            .Select(id => Count(id, pieces, rig, stock, policies))
            .Where(count => count.Kind?.Role != Role.Case)
            .ToList();
        var lines = Lines(counts, count => pulled.Contains(count.Item));
        var units = Packing.Pack(lines, BuiltIn.Find(gig, pieces), stock, policies.WeightMargin);
        var cases = units.Where(unit => unit.Kind?.Role == Role.Case || unit.Contents.Count > 0)
            .GroupBy(unit => unit.Item, StringComparer.Ordinal)
            .Select(group => CountCases(group.Key, [.. group], pieces, stock));
        return new StockPlan(
            [.. lines.Concat(Lines([.. cases], _ => true)).Order(Comparer<StockLine>.Create(ByShelf))],
            [.. pieces.Where(piece => !piece.IsPulled)],
            units);
    }

    private static List<StockLine> Lines(List<ItemCount> counts, Func<ItemCount, bool> isWanted)
    {
        var standIns = StandIns.Find(counts.ToDictionary(count => count.Item, StringComparer.Ordinal));
        var lines = counts.Where(count => isWanted(count) || standIns.For(count.Item) > 0).Select(count => LineOf(count, standIns)).ToList();
        lines.Sort(ByShelf);
        return lines;
    }

    private static ItemCount Count(string item, IReadOnlyList<Piece> pieces, Figure<int> rig, Stock stock, Policies policies)
    {
        var kind = stock.Find(item);
        var ofItem = pieces.Where(piece => piece.Item == item).ToList();
        var need = Need(ofItem);
        var hired = new Figure<int>(ofItem.Count(ExtrasDepartment.IsCover), need.RestsOn, Reason.Derived.It);
        return new ItemCount(
            item, kind, need, SparePolicies.Of(kind, need, rig, policies), Ready(kind), hired, [.. ofItem.Where(piece => piece.IsPulled)]);
    }

    private static Figure<int> Need(IReadOnlyList<Piece> pieces) => new(
        pieces.Count(piece => piece.IsPulled),
        pieces.Aggregate(Doubts.None, (sum, piece) => sum.With(Doubts.Of(piece.From.Doubt))),
        Reason.Derived.It);

    // A case is needed because something is in it, or because somebody asked for it; nothing is spared.
    private static ItemCount CountCases(string item, IReadOnlyList<TravellingUnit> units, IReadOnlyList<Piece> pieces, Stock stock)
    {
        var doubts = units.Aggregate(Doubts.None, (sum, unit) => sum.With(unit.Gross.RestsOn));
        var need = new Figure<int>(units.Count, doubts, Reason.Derived.It);
        var asked = pieces.Where(piece => piece.Item == item).ToList();
        var hired = new Figure<int>(asked.Count(ExtrasDepartment.IsCover), doubts, Reason.Derived.It);
        var kind = stock.Find(item);
        return new ItemCount(item, kind, need, Figure.Count(0), Ready(kind), hired, [.. asked.Where(piece => piece.IsPulled)]);
    }

    private static Figure<int> Ready(Kind? kind) => kind is null
        ? new Figure<int>(null, Doubts.None, Reason.Derived.It)
        : Sum.Of("ready", "r = max(0, o - b)", Publication.Arithmetic)
            .Put("o", Figure.From(kind.Owned))
            .Put("b", new Figure<int>(kind.OutForRepair, Doubts.None, new Reason.Fixed(kind.At)))
            .Gives((owned, broken) => Math.Max(0, owned - broken));

    private static StockLine LineOf(ItemCount count, StandIns standIns)
    {
        var standingIn = standIns.For(count.Item);
        var covered = standIns.Of(count.Item);
        var moved = standingIn - covered.Sum(item => item.Count);
        var total = Sum.Of("total", "t = n + s + i", Publication.Arithmetic)
            .Put("n", count.Need)
            .Put("s", count.Spare)
            .Put("i", Figure.Count(moved))
            .Gives((need, spare, changed) => need + spare + changed);
        return new StockLine(
            Address.Of("stock") / count.Item,
            count.Item,
            count.Kind,
            count.Need,
            count.Spare,
            standingIn,
            total,
            count.Ready,
            covered,
            count.Hired,
            Short("short", total, count),
            ShortInUse(moved, count),
            count.Pieces);
    }

    private static Figure<int> Short(string name, Figure<int> wanted, ItemCount count) =>
        Sum.Of(name, "m = max(0, t - r - h)", Publication.Arithmetic)
            .Put("t", wanted)
            .Put("r", count.Ready)
            .Put("h", count.Hired)
            .Gives((total, ready, hired) => Math.Max(0, total - ready - hired));

    private static Figure<int> ShortInUse(int moved, ItemCount count) =>
        Sum.Of("short of what is in use", "m = max(0, n + i - r - h)", Publication.Arithmetic)
            .Put("n", count.Need)
            .Put("i", Figure.Count(moved))
            .Put("r", count.Ready)
            .Put("h", count.Hired)
            .Gives((need, changed, ready, hired) => Math.Max(0, need + changed - ready - hired));

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
