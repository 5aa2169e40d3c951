namespace Advance.Planning;

/// <summary>What came of hanging all chains on outlets.</summary>
/// <param name="Unfed">What found none.</param>
/// <param name="GivenUp">Circuits fixed by hand that were not kept.</param>
/// <param name="IsProven">Whether nothing better exists.</param>
internal sealed record CircuitHanging(IReadOnlyList<UnfedChain> Unfed, IReadOnlyList<GivenUpCircuit> GivenUp, bool IsProven);
