namespace Advance.Sheets.Views;

/// <summary>What goes into the vehicles, in which order.</summary>
/// <param name="Vehicles">Name, kind, driver, where it stands.</param>
/// <param name="Totals">Weight against payload, floor, volume, straps.</param>
/// <param name="Groups">By the task they are needed for first; the first to go in comes first.</param>
/// <param name="Findings">What the rules have to say about the load.</param>
/// <param name="Unit">Of all weights.</param>
/// <param name="RestsOn">The open questions that may change the load; blank where there are none.</param>
public sealed record TruckSheetView(
    IReadOnlyList<PairView> Vehicles,
    IReadOnlyList<PairView> Totals,
    IReadOnlyList<TruckSheetView.Group> Groups,
    IReadOnlyList<FindingView> Findings,
    string Unit,
    Cell RestsOn)
{
    /// <summary>What one task needs.</summary>
    /// <param name="For">The task.</param>
    /// <param name="Rows">In the order of loading.</param>
    public sealed record Group(string For, IReadOnlyList<Row> Rows);

    /// <summary>Cases that hold the same, or loose pieces of one kind.</summary>
    /// <param name="Place">Or places, in the order of loading.</param>
    /// <param name="Name">As on its label.</param>
    /// <param name="Contents">What is in each.</param>
    /// <param name="Count">How many alike.</param>
    /// <param name="Gross">What each weighs.</param>
    public sealed record Row(Cell Place, Cell Name, Cell Contents, Cell Count, Cell Gross);
}
