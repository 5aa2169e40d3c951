namespace Advance.Planning;

/// <summary>
/// Which outlet feeds what, in whole numbers alone: currents in 10 mA, distances in centimetres. Outlets that are alike are one group, since
/// which of them is taken changes nothing. Currents on a leg are added as magnitudes, which no sum of phasors exceeds: each load is a
/// vector of its two fundamental parts and its harmonics by order, as long as its root mean square, and the length of a sum is at most the sum of
/// lengths. So what holds here holds when angles are looked at, and nothing has to be solved a second time because of them. Neutrals are no nodes.
/// </summary>
/// <param name="Wishes">What wants an outlet, the first to be numbered first.</param>
/// <param name="Groups">Outlets that are alike.</param>
/// <param name="Nodes">Everything further up that carries what hangs below it, each leg by itself.</param>
/// <param name="States">How many show states there are.</param>
internal sealed record CircuitProblem(
    IReadOnlyList<CircuitWish> Wishes, IReadOnlyList<CircuitGroup> Groups, IReadOnlyList<CircuitNode> Nodes, int States)
{
    /// <summary>Residual-current devices and breakers further up.</summary>
    public IReadOnlyList<CircuitGuard> Guards { get; init; } = [];

    /// <summary>How many wishes and ways to grant them there are.</summary>
    public int Size => Wishes.Sum(wish => wish.Options.Count);
}
