namespace Advance.Sheets.Views;

/// <summary>The pull list: what is taken off the shelves, what it is packed in, and what others bring.</summary>
/// <param name="Departments">By department, then shelf and item, without cases and vehicles.</param>
/// <param name="Cases">By shelf; what each holds stands on the truck sheet.</param>
/// <param name="FromOthers">What is not pulled, by who brings it.</param>
/// <param name="Totals">Of the whole list.</param>
/// <param name="RestsOn">The open questions that may change who brings what, and how many; blank where there are none.</param>
public sealed record PullListView(
    IReadOnlyList<PullListView.Department> Departments,
    IReadOnlyList<PullListView.CaseLine> Cases,
    IReadOnlyList<PullListView.Other> FromOthers,
    IReadOnlyList<PairView> Totals,
    Cell RestsOn)
{
    /// <summary>One department of the shop.</summary>
    /// <param name="Name">As in the stock.</param>
    /// <param name="Lines">By shelf and item.</param>
    /// <param name="Pieces">How many pieces are pulled.</param>
    /// <param name="Cases">How many cases they go into.</param>
    /// <param name="Weight">Of the pieces, without cases.</param>
    /// <param name="Gross">With cases.</param>
    public sealed record Department(string Name, IReadOnlyList<Line> Lines, Cell Pieces, Cell Cases, Cell Weight, Cell Gross);

    /// <summary>One kind.</summary>
    /// <param name="Shelf">Where it lies.</param>
    /// <param name="Need">Pieces in use.</param>
    /// <param name="Spare">Pieces more.</param>
    /// <param name="Total">To be taken off the shelf.</param>
    /// <param name="Item">Name on the shelf label.</param>
    /// <param name="Id">Of the kind.</param>
    /// <param name="Into">Which cases it goes into; <c>loose</c> where into none.</param>
    /// <param name="Short">How many are missing, and from whom to hire.</param>
    /// <param name="Remark">Stand-ins, tests due.</param>
    /// <param name="IsCompanion">Whether it only ever goes with the line above that is none.</param>
    public sealed record Line(
        Cell Shelf, Cell Need, Cell Spare, Cell Total, Cell Item, Cell Id, Cell Into, Cell Short, Cell Remark, bool IsCompanion);

    /// <summary>Cases of one kind.</summary>
    /// <param name="Shelf">Where it lies.</param>
    /// <param name="Total">To be taken off the shelf.</param>
    /// <param name="Item">Name on the shelf label.</param>
    /// <param name="Short">How many are missing, and from whom to hire.</param>
    public sealed record CaseLine(Cell Shelf, Cell Total, Cell Item, Cell Short);

    /// <summary>What somebody else brings.</summary>
    /// <param name="From">Who.</param>
    /// <param name="Count">How many.</param>
    /// <param name="Item">What.</param>
    /// <param name="For">What for.</param>
    public sealed record Other(Cell From, Cell Count, Cell Item, Cell For);
}
