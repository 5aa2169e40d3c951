namespace Advance.Planning;

/// <summary>What found no outlet.</summary>
/// <param name="Chain">It.</param>
/// <param name="Reason">Why.</param>
public sealed record UnfedChain(PowerChain Chain, UnfedReason Reason);
