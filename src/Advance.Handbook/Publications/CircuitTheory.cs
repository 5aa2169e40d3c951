using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>What follows from Ohm's and Kirchhoff's laws for sinusoidal currents and needs no standard.</summary>
public static class CircuitTheory
{
    /// <summary>Phasors add as complex numbers.</summary>
    public static readonly Publication Phasors = new("circuit theory", "", "sum of phasors", Standing.Read);

    /// <summary>Resistances and impedances in series and side by side.</summary>
    public static readonly Publication Ohm = new("circuit theory", "", "Ohm's law", Standing.Read);

    /// <summary>Three phasors as a forward, a backward and a common system.</summary>
    public static readonly Publication Sequences = new("circuit theory", "", "symmetrical components", Standing.Read);
}
