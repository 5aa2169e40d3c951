namespace Advance.Planning;

/// <summary>Weight spread evenly along a stretch of truss: its own, cloth, cable.</summary>
/// <param name="From">m from its left end.</param>
/// <param name="To">m, beyond where it starts.</param>
/// <param name="PerMetre">N/m, 0 or more.</param>
public sealed record HungWeight(double From, double To, double PerMetre);
