namespace Advance.Sheets.Views;

/// <summary>The pull list, and what others bring.</summary>
/// <param name="Departments">By department, then shelf and item.</param>
/// <param name="FromOthers">What is not pulled, by who brings it.</param>
/// <param name="Totals">Of the whole list.</param>
/// <param name="RestsOn">The open questions that may change who brings what, and how many; blank where there are none.</param>
public sealed record PullListView(
    IReadOnlyList<PullListView.Department> Departments, IReadOnlyList<PullListView.Other> FromOthers, IReadOnlyList<PairView> Totals, Cell RestsOn)
{
    /// <summary>One department of the shop.</summary>
    /// <param name="Name">As in the stock.</param>
    /// <param name="Lines">By shelf and item.</param>
    /// <param name="Foot">Lines, pieces and weight, in words.</param>
    public sealed record Department(string Name, IReadOnlyList<Line> Lines, string Foot);

    /// <summary>One kind.</summary>
    /// <param name="Shelf">Where it lies.</param>
    /// <param name="Need">Pieces in use.</param>
    /// <param name="Spare">Pieces more.</param>
    /// <param name="Total">To be taken off the shelf.</param>
    /// <param name="Issue">Each, or how many to which case.</param>
    /// <param name="Item">Name on the shelf label.</param>
    /// <param name="Id">Of the kind.</param>
    /// <param name="Weight">Of all of them, in the unit of the paper.</param>
    /// <param name="For">What it is needed for.</param>
    /// <param name="Short">How many are missing, and from whom to hire.</param>
    /// <param name="Remark">Stand-ins, tests due.</param>
    public sealed record Line(
        Cell Shelf, Cell Need, Cell Spare, Cell Total, Cell Issue, Cell Item, Cell Id, Cell Weight, Cell For, Cell Short, Cell Remark);

    /// <summary>What somebody else brings.</summary>
    /// <param name="From">Who.</param>
    /// <param name="Count">How many.</param>
    /// <param name="Item">What.</param>
    /// <param name="For">What for.</param>
    public sealed record Other(Cell From, Cell Count, Cell Item, Cell For);
}
