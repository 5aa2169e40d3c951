using UnitsNet;

namespace Advance.Handbook;

/// <summary>What physics says of chain hoists, whoever makes them.</summary>
public static class ChainHoists
{
    private const double Gravity = 9.80665;

    /// <summary>What lifting takes: <c>P = m g v / η</c>. Source: <see cref="Domain.Figures.Publication.Arithmetic"/>.</summary>
    /// <param name="mass">Lifted, 0 kg or more.</param>
    /// <param name="speed">0 m/s or more.</param>
    /// <param name="efficiency">η, over 0 to 1; 1 for the mechanical power.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static Power Lifting(Mass mass, Speed speed, double efficiency)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(mass.Kilograms);
        ArgumentOutOfRangeException.ThrowIfNegative(speed.MetersPerSecond);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(efficiency);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(efficiency, 1);
        return Power.FromWatts(mass.Kilograms * Gravity * speed.MetersPerSecond / efficiency);
    }

    /// <summary>Mass of short-link chain for each metre: <c>0.0219 d²</c> kg, d in mm. Source: <see cref="RiggingStandards.ChainMass"/>.</summary>
    /// <param name="thickness">d, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The chain has no thickness.</exception>
    public static LinearDensity ChainMass(Length thickness)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(thickness.Millimeters);
        return LinearDensity.FromKilogramsPerMeter(0.0219 * thickness.Millimeters * thickness.Millimeters);
    }
}
