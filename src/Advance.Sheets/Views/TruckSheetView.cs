namespace Advance.Sheets.Views;

/// <summary>What goes into the vehicles, in which order.</summary>
/// <param name="Vehicles">Name, kind, driver, where it stands.</param>
/// <param name="Totals">Weight against payload, floor, volume, straps.</param>
/// <param name="Rows">The first to go in comes first.</param>
/// <param name="Findings">What the rules have to say about the load.</param>
/// <param name="HasSeveral">Whether there is more than one vehicle.</param>
/// <param name="Unit">Of all weights.</param>
/// <param name="RestsOn">The open questions that may change the load; blank where there are none.</param>
public sealed record TruckSheetView(
    IReadOnlyList<PairView> Vehicles,
    IReadOnlyList<PairView> Totals,
    IReadOnlyList<TruckSheetView.Row> Rows,
    IReadOnlyList<FindingView> Findings,
    bool HasSeveral,
    string Unit,
    Cell RestsOn)
{
    /// <summary>A case, or loose pieces of one kind.</summary>
    /// <param name="Place">In the order of loading.</param>
    /// <param name="Name">As on its label.</param>
    /// <param name="Contents">What is in it.</param>
    /// <param name="For">The task that it is needed for first.</param>
    /// <param name="Count">How many alike.</param>
    /// <param name="Gross">What each weighs.</param>
    public sealed record Row(Cell Place, Cell Name, Cell Contents, Cell For, Cell Count, Cell Gross);
}
