using UnitsNet;

namespace Advance.Handbook;

/// <summary>Feeders of single cores, one for each line, the neutral and the earth.</summary>
public static class SinglePoleSets
{
    /// <summary>How many times the lines' capacity the neutral needs where phase-control dimmers are fed. Source: <see cref="Nec.DimmerNeutral"/>.</summary>
    public const double DimmerNeutral = 1.3;

    /// <summary>What the neutral must carry where phase-control dimmers are fed: <c>N = 1.3 · I</c>. Source: <see cref="Nec.DimmerNeutral"/>.</summary>
    /// <param name="line">What a line conductor carries, A.</param>
    public static ElectricCurrent NeutralForDimmers(ElectricCurrent line) => ElectricCurrent.FromAmperes(DimmerNeutral * line.Amperes);
}
