using UnitsNet;

namespace Advance.Handbook;

/// <summary>What would flow into a dead short. A device must be able to break the largest at its terminals: <see cref="Bs7671.BreakingCapacity"/>.</summary>
public static class ProspectiveCurrents
{
    /// <summary>From a line to neutral or to earth: <c>I = U₀ / Z</c>. Source: <see cref="CircuitTheory.Ohm"/>.</summary>
    /// <param name="toNeutral">U₀, V.</param>
    /// <param name="loop">Z, more than 0; the lesser of the loops to neutral and to earth, cold.</param>
    /// <exception cref="ArgumentOutOfRangeException">The impedance is not more than 0.</exception>
    public static ElectricCurrent OneLine(ElectricPotential toNeutral, ElectricResistance loop)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(loop.Ohms);
        return ElectricCurrent.FromAmperes(toNeutral.Volts / loop.Ohms);
    }

    /// <summary>
    /// Between all three lines, where only the loop to neutral is known: <c>2 · I</c>, and no more where the neutral is no thinner than a line. Source:
    /// <see cref="IetGuidance.ThreePhaseFault"/>.
    /// </summary>
    /// <param name="oneLine">From a line to neutral, A; one to earth through a thinner conductor would come out too small.</param>
    public static ElectricCurrent ThreeLines(ElectricCurrent oneLine) => 2 * oneLine;
}
