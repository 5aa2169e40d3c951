namespace Advance.Sheets.Views;

/// <summary>Labels to cut out.</summary>
/// <param name="Cables">Rows of the grid of cable labels.</param>
/// <param name="Cases">A label for each case.</param>
/// <param name="Gig">Its title and date, on each label.</param>
/// <param name="CablesRestOn">The open questions that may change cable labels; blank where there are none.</param>
/// <param name="RestsOn">The open questions that may change case labels; blank where there are none.</param>
public sealed record LabelsView(
    IReadOnlyList<LabelsView.CableRow> Cables, IReadOnlyList<LabelsView.CaseLabel> Cases, string Gig, Cell CablesRestOn, Cell RestsOn)
{
    /// <summary>Labels side by side; those missing at the end are blank.</summary>
    public sealed record CableRow(IReadOnlyList<CableLabel> Labels);

    /// <summary>One label.</summary>
    /// <param name="Label">Of the run.</param>
    /// <param name="From">Where it starts.</param>
    /// <param name="To">Where it goes.</param>
    /// <param name="Length">Of its leads.</param>
    public sealed record CableLabel(Cell Label, Cell From, Cell To, Cell Length);

    /// <summary>One case.</summary>
    /// <param name="Destination">In capitals.</param>
    /// <param name="Name">Of the case.</param>
    /// <param name="Contents">What is in it.</param>
    /// <param name="Gross">What it weighs, with its unit.</param>
    /// <param name="Place">In the order of loading.</param>
    public sealed record CaseLabel(string Destination, Cell Name, Cell Contents, Cell Gross, Cell Place);
}
