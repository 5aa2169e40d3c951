namespace Advance.Sheets.Views;

/// <summary>What came back lost or broken: blank lines, and what left to count against.</summary>
/// <param name="Left">What left the shop, by department.</param>
/// <param name="Hired">What must go back to others, by firm.</param>
/// <param name="RestsOn">The open questions that may change how many left; blank where there are none.</param>
public sealed record LossListView(IReadOnlyList<LossListView.Line> Left, IReadOnlyList<PairView> Hired, Cell RestsOn)
{
    /// <summary>One department.</summary>
    /// <param name="Department">Its name.</param>
    /// <param name="Pieces">How many left.</param>
    /// <param name="Cases">In how many cases.</param>
    public sealed record Line(Cell Department, Cell Pieces, Cell Cases);
}
