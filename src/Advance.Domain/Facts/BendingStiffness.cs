namespace Advance.Domain.Facts;

/// <summary>Modulus of elasticity times second moment of area, of a truss as a whole.</summary>
/// <param name="NewtonSquareMetres">In N·m², above 0.</param>
public readonly record struct BendingStiffness(double NewtonSquareMetres) : IComparable<BendingStiffness>
{
    /// <summary>The softer comes first.</summary>
    public int CompareTo(BendingStiffness other) => NewtonSquareMetres.CompareTo(other.NewtonSquareMetres);
}
