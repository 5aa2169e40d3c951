using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>What follows from the statics of rigid bodies and needs no standard.</summary>
public static class Statics
{
    /// <summary>Moments about an edge, forces along a slope.</summary>
    public static readonly Publication Bodies = new("statics", "", "balance of forces and moments", Standing.Read);
}
