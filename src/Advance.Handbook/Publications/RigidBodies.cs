using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>What follows from the statics of rigid bodies and needs no standard.</summary>
public static class RigidBodies
{
    /// <summary>Moments about an edge, forces along a slope.</summary>
    public static readonly Publication Balance = new("statics", "", "balance of forces and moments", Standing.Read);
}
