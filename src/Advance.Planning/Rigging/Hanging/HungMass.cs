namespace Advance.Planning;

/// <summary>Something fixed to a flying frame, or the frame itself, seen from its front pin along the frame's own axes: bar, cable, laser.</summary>
/// <param name="Weight">N, 0 or more.</param>
/// <param name="Forward">Where its centre of gravity is, m towards the audience; negative behind the pin.</param>
/// <param name="Down">m below the pin; negative above it.</param>
public sealed record HungMass(double Weight, double Forward, double Down);
