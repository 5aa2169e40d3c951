namespace Advance.Sheets.Views;

/// <summary>What is set, addressed and labelled before anything is packed.</summary>
/// <param name="Fixtures">By number.</param>
/// <param name="Units">Units with a control port or with software.</param>
/// <param name="Outputs">Outputs of processors that something hangs on.</param>
/// <param name="Boxes">Boxes that are set themselves.</param>
/// <param name="Radios">What sends or receives by radio.</param>
/// <param name="Tests">Pieces whose next test is due before the gig is over, or not known.</param>
/// <param name="RestsOn">The open questions behind all of it; blank where there are none.</param>
public sealed record PrepSheetView(
    IReadOnlyList<PrepSheetView.Fixture> Fixtures,
    IReadOnlyList<PrepSheetView.Unit> Units,
    IReadOnlyList<PrepSheetView.Output> Outputs,
    IReadOnlyList<PrepSheetView.Box> Boxes,
    IReadOnlyList<PrepSheetView.Radio> Radios,
    IReadOnlyList<FindingView> Tests,
    Cell RestsOn)
{
    /// <summary>One fixture.</summary>
    public sealed record Fixture(Cell Number, Cell Item, Cell Position, Cell Mode, Cell At);

    /// <summary>One unit on the network.</summary>
    public sealed record Unit(Cell Name, Cell Item, Cell Network, Cell Software);

    /// <summary>One output.</summary>
    public sealed record Output(Cell Port, Cell Feeds, Cell Polarity, Cell Gain, Cell Delay, Cell Filters, Cell Muted);

    /// <summary>One box with a setting of its own.</summary>
    public sealed record Box(Cell Name, Cell Item, Cell Polarity, Cell Delay, Cell Filters, Cell Aim);

    /// <summary>Radios of one kind.</summary>
    public sealed record Radio(Cell Count, Cell Item, Cell For);
}
