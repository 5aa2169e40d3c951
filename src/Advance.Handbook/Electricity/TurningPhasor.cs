namespace Advance.Handbook;

/// <summary>A phasor whose length is known and whose direction is known only within limits.</summary>
/// <param name="Length">0 or more.</param>
/// <param name="Middle">The middle of its directions, radian.</param>
/// <param name="Within">How far it may turn to either side of that, radian, 0 to π.</param>
public readonly record struct TurningPhasor(double Length, double Middle, double Within);
