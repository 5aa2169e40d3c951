using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>What follows from equilibrium, geometry and the theory of beams, and needs no standard.</summary>
public static class Statics
{
    /// <summary>Forces add to nothing, and so do their moments.</summary>
    public static readonly Publication Equilibrium = new("statics", "", "equilibrium", Standing.Read);

    /// <summary>Beams that bend and shear, supports that give.</summary>
    public static readonly Publication ShearFlexibleBeam = new("statics", "", "shear-flexible beam, stiffness method", Standing.Read);

    /// <summary>Continuous beams of equal spans, reactions and moments as exact fractions.</summary>
    public static readonly Publication ContinuousBeamTable = new("Civil Engineering Formulas", "", "Table 2.1, p. 50", Standing.Read);

    /// <summary>Legs of a bridle and what they pull.</summary>
    public static readonly Publication Bridles = new("rigging arithmetic", "", "tension of bridle legs", Standing.Read);
}
