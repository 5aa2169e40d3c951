namespace Advance.Handbook;

/// <summary>A largest or smallest value along a beam.</summary>
/// <param name="Value">N, N m or m, as the case is.</param>
/// <param name="At">Where, m from the left end.</param>
public readonly record struct BeamExtreme(double Value, double At);
