namespace Advance.Planning;

/// <summary>
/// Which outlet feeds what, in whole numbers alone: currents in 10 mA, distances in centimetres. Outlets that are alike are one group, since
/// which of them is taken changes nothing.
/// </summary>
/// <param name="Wishes">What wants an outlet, the first to be numbered first.</param>
/// <param name="Groups">Outlets that are alike.</param>
/// <param name="Nodes">Everything further up that carries what hangs below it, each leg by itself.</param>
/// <param name="States">How many show states there are.</param>
internal sealed record CircuitProblem(
    IReadOnlyList<CircuitWish> Wishes, IReadOnlyList<CircuitGroup> Groups, IReadOnlyList<CircuitNode> Nodes, int States);
