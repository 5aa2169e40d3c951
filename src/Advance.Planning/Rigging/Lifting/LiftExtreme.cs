namespace Advance.Planning;

/// <summary>A largest or smallest value, where it is, and in which case.</summary>
/// <param name="Value">N or N m.</param>
/// <param name="At">m from the truss's left end.</param>
/// <param name="Case">The case.</param>
public sealed record LiftExtreme(double Value, double At, LiftCase Case);
