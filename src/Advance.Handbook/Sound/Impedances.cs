using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Handbook;

/// <summary>What loudspeakers and their cables are to an amplifier. Source: <see cref="CircuitTheory.Ohm"/>.</summary>
public static class Impedances
{
    /// <summary>Loads side by side on one channel: <c>Z = 1 / Σ (1 / Zᵢ)</c>.</summary>
    /// <param name="loads">At least one, each more than 0 Ω.</param>
    /// <exception cref="ArgumentOutOfRangeException">No load, or one of nothing.</exception>
    public static ElectricResistance Parallel(Terms<ElectricResistance> loads)
    {
        ArgumentOutOfRangeException.ThrowIfZero(loads.Values.Count);
        foreach (var load in loads.Values)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(load.Ohms);
        }

        return ElectricResistance.FromOhms(1 / loads.Values.Sum(load => 1 / load.Ohms));
    }

    /// <summary>Level at the load for the level at the amplifier, 0 or less: <c>D = 20 · log10(Z / (Z + R))</c>.</summary>
    /// <param name="load">Ω, more than 0.</param>
    /// <param name="cable">Of both conductors, there and back, Ω; see <see cref="Conductors.Loop"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The load is not more than 0 or the cable is negative.</exception>
    public static Level CableLoss(ElectricResistance load, ElectricResistance cable)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(load.Ohms);
        ArgumentOutOfRangeException.ThrowIfNegative(cable.Ohms);
        return Level.FromDecibels(20 * Math.Log10(load.Ohms / (load.Ohms + cable.Ohms)));
    }
}
