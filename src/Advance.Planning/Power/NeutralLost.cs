using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>The voltages of each leg if the neutral of a place opens, in the show state in which a leg with loads gets most.</summary>
/// <param name="State">That state.</param>
/// <param name="Legs">Each leg.</param>
public sealed record NeutralLost(ShowState State, IReadOnlyList<LostLeg> Legs);
