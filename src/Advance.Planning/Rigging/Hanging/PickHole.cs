namespace Advance.Planning;

/// <summary>A hole of a flying frame that a hoist may pick it up by, seen from its front pin along the frame's own axes.</summary>
/// <param name="Forward">m towards the audience; negative behind the pin.</param>
/// <param name="Up">m above the pin.</param>
public sealed record PickHole(double Forward, double Up);
