namespace Advance.Planning;

/// <summary>Outlets of one distribution that are alike.</summary>
/// <param name="Slots">How many are free for what is to be assigned.</param>
/// <param name="Limit">What each may carry; null where nobody knows.</param>
/// <param name="Nodes">What carries it on the way to the supply.</param>
/// <param name="Supply">Which supply it comes from in the end.</param>
internal sealed record CircuitGroup(int Slots, int? Limit, IReadOnlyList<int> Nodes, int Supply);
