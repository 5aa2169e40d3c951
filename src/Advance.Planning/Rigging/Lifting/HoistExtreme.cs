namespace Advance.Planning;

/// <summary>The most or the least that a hoist carries, and in which case.</summary>
/// <param name="Level">N.</param>
/// <param name="Case">The case.</param>
public sealed record HoistExtreme(double Level, LiftCase Case);
