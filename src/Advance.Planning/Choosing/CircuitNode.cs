namespace Advance.Planning;

/// <summary>One leg of something that carries what hangs below it: an inlet, a feeding outlet, a service.</summary>
/// <param name="Limit">What it may carry; null where nobody knows.</param>
/// <param name="Others">What it carries already, in each show state.</param>
/// <param name="Balanced">The same number for the legs of one three-phase node; null on a single-phase one.</param>
internal sealed record CircuitNode(int? Limit, IReadOnlyList<int> Others, int? Balanced = null);
