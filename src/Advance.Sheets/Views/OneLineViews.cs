using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Planning;
using Advance.Sheets.Drawings;

namespace Advance.Sheets.Views;

/// <summary>Makes the one-line.</summary>
internal static class OneLineViews
{
    // In mm of an A4 page across: what is left under the head, and with a line of words under the drawing.
    private const double Highest = 128;
    private const double Widest = 268;

    /// <summary>Null where nothing is fed.</summary>
    public static OneLineView? Of(Plan plan)
    {
        var trees = OneLineParts.Of(plan);
        return trees.Count == 0 ? null : new OneLineView(
            [.. Pages(trees)],
            plan.Power.ServicesInUse.Skip(1).Any(),
            OneLineDrawing.WidthOf(trees) <= Widest ? "" : plan.Brief.Company.Paper == PaperSize.Letter ? "tabloid" : "a3",
            Cells.Head(plan.Power.Services.Aggregate(plan.Power.RestsOn.With(plan.Cables.RestsOn), (sum, point) => sum.With(DoubtsOf(point)))));
    }

    // As many ends on a page as are legible, at least one; a page rather ends with a tree than within one, where that leaves it half full.
    private static IEnumerable<OneLineView.Page> Pages(IReadOnlyList<OneLineNode> trees)
    {
        var ends = trees.Sum(tree => tree.Ends);
        for (var first = 0; first < ends;)
        {
            var count = 1;
            while (first + count < ends && OneLineDrawing.HeightOf(OneLineTree.Part(trees, first, count + 1)) <= Highest)
            {
                count++;
            }

            var whole = Ends(trees).LastOrDefault(end => end > first + (count / 2) && end <= first + count);
            count = whole > 0 ? whole - first : count;
            yield return new OneLineView.Page(first, count);
            first += count;
        }
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
