using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Planning;
using Advance.Sheets.Drawings;

namespace Advance.Sheets.Views;

/// <summary>Makes the one-line.</summary>
internal static class OneLineViews
{
    /// <summary>Null where nothing is fed.</summary>
    public static OneLineView? Of(Plan plan)
    {
        var small = OneLineParts.Of(plan, OneLineRoom.Small);
        if (small.Count == 0)
        {
            return null;
        }

        var isSmall = OneLineDrawing.WidthOf(small) <= OneLineRoom.Small.Wide && OneLineDrawing.HeightOf(small) <= OneLineRoom.Small.High;
        var room = isSmall ? OneLineRoom.Small : OneLineRoom.Large;
        return new OneLineView(
            [.. Pages(isSmall ? small : OneLineParts.Of(plan, room), room)],
            plan.Power.ServicesInUse.Skip(1).Any(),
            isSmall ? "" : plan.Brief.Company.Paper == PaperSize.Letter ? "tabloid" : "a3",
            BondsOf(plan),
            Cells.Head(plan.Power.Services.Aggregate(plan.Power.RestsOn.With(plan.Cables.RestsOn), (sum, point) => sum.With(DoubtsOf(point)))));
    }

    // As many ends on a page as are legible, at least one; a page rather ends with a tree than within one, where that leaves it half full.
    private static IEnumerable<OneLineView.Page> Pages(IReadOnlyList<OneLineNode> trees, OneLineRoom room)
    {
        var ends = trees.Sum(tree => tree.Ends);
        for (var first = 0; first < ends;)
        {
            var count = 1;
            while (first + count < ends && OneLineDrawing.HeightOf(OneLineTree.Part(trees, first, count + 1)) <= room.High)
            {
                count++;
            }

            var whole = Ends(trees).LastOrDefault(end => end > first + (count / 2) && end <= first + count);
            count = whole > 0 ? whole - first : count;
            yield return new OneLineView.Page(first, count, room == OneLineRoom.Large ? "large" : "small");
            first += count;
        }
    }

    private static IReadOnlyList<PairView> BondsOf(Plan plan)
    {
        var cells = new Cells(plan);
        return [.. plan.Brief.Gig.Power.Bonds.Select(bond => new PairView(DaySheetViews.Capital(bond.Structure), cells.Of(bond.To)))];
    }

    private static IEnumerable<int> Ends(IReadOnlyList<OneLineNode> trees)
    {
        var end = 0;
        foreach (var tree in trees)
        {
            yield return end += tree.Ends;
        }
    }

    private static Doubts DoubtsOf(SupplyPoint point) =>
        Doubts.Of(point.Service!.Earthing.Doubt).With(Doubts.Of(point.Service.ResidualProtection.Doubt)).With(Doubts.Of(point.Service.Supply.Doubt));
}
