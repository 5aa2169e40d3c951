namespace Advance.Planning;

/// <summary>How an end gets to the network: straight to a point of a strand.</summary>
/// <param name="Point">Where it meets the network.</param>
/// <param name="Spot">The same, as a spot.</param>
/// <param name="Cost">What the straight piece counts when ways are compared.</param>
/// <param name="IsEstimated">Whether it is further than leads are usually laid straight.</param>
internal readonly record struct Approach(OnStrand Point, Spot Spot, double Cost, bool IsEstimated);
