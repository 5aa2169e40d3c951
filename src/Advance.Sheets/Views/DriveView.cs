namespace Advance.Sheets.Views;

/// <summary>What is routed, set and addressed where, and the way to walk before sound.</summary>
/// <param name="Processors">Each with its matrix and its outputs.</param>
/// <param name="Boxes">What is set on loudspeakers themselves, from the first stack on.</param>
/// <param name="Units">What has an address or runs software.</param>
/// <param name="Amplifiers">Channels of amplifiers and the load on each.</param>
/// <param name="Facts">Speed of sound, network.</param>
/// <param name="Steps">The check-off, in order.</param>
/// <param name="Findings">What rules say about it.</param>
/// <param name="RestsOn">The open questions that may move leads and addresses.</param>
public sealed record DriveView(
    IReadOnlyList<DriveView.Processor> Processors,
    IReadOnlyList<DriveView.Box> Boxes,
    IReadOnlyList<DriveView.Unit> Units,
    IReadOnlyList<DriveView.Amplifier> Amplifiers,
    IReadOnlyList<PairView> Facts,
    IReadOnlyList<string> Steps,
    IReadOnlyList<FindingView> Findings,
    Cell RestsOn)
{
    /// <summary>Whether a unit has an address, so that there is a column for it.</summary>
    public bool HasAddresses => Units.Any(unit => !unit.Address.IsBlank);

    /// <summary>Whether a box has an electronic aim.</summary>
    public bool BoxesAim => Boxes.Any(box => !box.Aim.IsBlank);

    /// <summary>One processor.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="Item">Its kind.</param>
    /// <param name="Place">Where it stands.</param>
    /// <param name="Inputs">What comes in: input, and what feeds it by which lead.</param>
    /// <param name="Matrix">One row for each output.</param>
    /// <param name="Outputs">One row for each output.</param>
    public sealed record Processor(
        string Name, Cell Item, Cell Place, IReadOnlyList<PairView> Inputs, IReadOnlyList<MatrixRow> Matrix, IReadOnlyList<Output> Outputs)
    {
        /// <summary>Whether an output has an electronic aim.</summary>
        public bool Aims => Outputs.Any(output => !output.Aim.IsBlank);

        /// <summary>Whether an output is delayed.</summary>
        public bool IsDelayed => Outputs.Any(output => !output.DelayFrom.IsBlank);
    }

    /// <summary>Which inputs an output is made from.</summary>
    /// <param name="Output">The output.</param>
    /// <param name="From">For each input: a dot where it is routed, blank where not.</param>
    public sealed record MatrixRow(Cell Output, IReadOnlyList<Cell> From);

    /// <summary>What is set on one output.</summary>
    public sealed record Output(
        Cell Name,
        Cell Feeds,
        Cell Lead,
        Cell Polarity,
        Cell Gain,
        Cell Delay,
        Cell DelayWay,
        Cell DelayFrom,
        Cell HighPass,
        Cell LowPass,
        Cell Aim,
        Cell StartsMuted,
        Cell Note);

    /// <summary>What is set on one loudspeaker.</summary>
    public sealed record Box(Cell Name, Cell Item, Cell Output, Cell FedBy, Cell Polarity, Cell Delay, Cell HighPass, Cell LowPass, Cell Aim);

    /// <summary>One unit.</summary>
    public sealed record Unit(Cell Name, Cell Item, Cell Place, Cell Address, Cell Software);

    /// <summary>One channel of an amplifier.</summary>
    public sealed record Amplifier(Cell Channel, Cell Boxes, Cell Impedance);
}
