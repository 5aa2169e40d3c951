using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>Makes the list of what was lost or broken.</summary>
internal static class LossListViews
{
    /// <summary>Null where nothing leaves the shop.</summary>
    public static LossListView? Of(Plan plan)
    {
        if (plan.Load.Departments.Count == 0)
        {
            return null;
        }

        var cells = new Cells(plan);
        var lines = plan.Load.Departments.Select(department => new LossListView.Line(
            Cell.Of(department.Name.Length > 0 ? DaySheetViews.Capital(department.Name) : "In no stock"),
            cells.Of(department.Pieces) with { Tbc = null },
            cells.Of(department.Cases) with { Tbc = null }));
        var hired = HireOrderViews.Of(plan)?.Orders.Select(order => new PairView(order.Firm, order.Until)) ?? [];
        return new LossListView([.. lines], [.. hired], Cells.Head(plan.Load.Pieces.RestsOn));
    }
}
