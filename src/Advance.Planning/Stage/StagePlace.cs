using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Where the middle of a stage's downstage edge is.</summary>
/// <param name="Stage">As written.</param>
/// <param name="Spot">Measured as all places are, from the downstage edge of the first stage; null where nobody knows.</param>
public sealed record StagePlace(Stage Stage, Spot? Spot);
