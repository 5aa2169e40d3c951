using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Planning;
using Advance.Sheets.Drawings;

namespace Advance.Sheets.Views;

/// <summary>Makes the one-line.</summary>
internal static class OneLineViews
{
    // So many ends are legible on a page across.
    private const int Most = 17;

    // In mm: A4 across, less its edges.
    private const double Widest = 268;

    /// <summary>Null where nothing is fed.</summary>
    public static OneLineView? Of(Plan plan)
    {
        var ends = new OneLineTree(plan).All().Sum(tree => tree.Ends);
        var pages = (ends + Most - 1) / Most;
        return pages == 0 ? null : new OneLineView(
            [.. Enumerable.Range(0, pages).Select(page => PageOf(page, pages, ends))],
            plan.Power.ServicesInUse.Skip(1).Any(),
            OneLineDrawing.WidthOf(plan) <= Widest ? "" : plan.Brief.Company.Paper == PaperSize.Letter ? "tabloid" : "a3",
            Cells.Head(plan.Power.Services.Aggregate(plan.Power.RestsOn.With(plan.Cables.RestsOn), (sum, point) => sum.With(DoubtsOf(point)))));
    }

    // Pages alike, none with a lone end.
    private static OneLineView.Page PageOf(int page, int pages, int ends)
    {
        var (first, next) = (page * ends / pages, (page + 1) * ends / pages);
        return new OneLineView.Page(first, next - first);
    }

    private static Doubts DoubtsOf(SupplyPoint point) =>
        Doubts.Of(point.Service!.Earthing.Doubt).With(Doubts.Of(point.Service.ResidualProtection.Doubt)).With(Doubts.Of(point.Service.Supply.Doubt));
}
