using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>What came of hanging all chains on outlets.</summary>
/// <param name="Unfed">What found none.</param>
/// <param name="GivenUp">Circuits fixed by hand that were not kept.</param>
/// <param name="IsProven">Whether nothing better exists, in any aim.</param>
/// <param name="Gap">How far the worst utilisation may be above the least there is, as a share of that least; 0 where it is proven, or comfortable.</param>
internal sealed record CircuitHanging(IReadOnlyList<UnfedChain> Unfed, IReadOnlyList<GivenUpCircuit> GivenUp, bool IsProven, double Gap)
{
    /// <summary>Circuits fixed by hand; were they free, everything would have an outlet and nothing carried too much. Empty where that is so, or would not help.</summary>
    public IReadOnlyList<CircuitRow> ToFree { get; init; } = [];

    /// <summary>Circuits fixed by hand on what is fullest, which need not be so full were they free; null where none cost so much.</summary>
    public CostlyCircuits? Costly { get; init; }
}
