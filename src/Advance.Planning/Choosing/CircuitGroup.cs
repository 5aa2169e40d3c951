namespace Advance.Planning;

/// <summary>Outlets of one distribution that are alike.</summary>
/// <param name="Slots">How many are free for what is to be assigned.</param>
/// <param name="Limit">What each may carry; null where nobody knows.</param>
/// <param name="Nodes">What carries it on the way to the supply: on every leg that the outlet has, so that what takes two or three counts full on each.</param>
/// <param name="Supply">Which supply it comes from in the end.</param>
internal sealed record CircuitGroup(int Slots, int? Limit, IReadOnlyList<int> Nodes, int Supply)
{
    /// <summary>What each outlet's own residual-current device bears of leakage; null where it has none, or nobody knows.</summary>
    public int? Leakage { get; init; }

    /// <summary>What each outlet's own breaker bears of inrush; null where nobody knows.</summary>
    public int? Inrush { get; init; }

    /// <summary>Which guards of the problem stand further up.</summary>
    public IReadOnlyList<int> Guards { get; init; } = [];

    /// <summary>The box whose breakers heat each other; null where there are none side by side.</summary>
    public int? Box { get; init; }
}
