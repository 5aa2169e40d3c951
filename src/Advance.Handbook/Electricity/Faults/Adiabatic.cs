using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// Whether a copper conductor outlives a fault of up to 5 s, in which no heat leaves it: <c>k² · S² ≥ I² · t</c>. Source: <see cref="Bs7671.Table431"/>.
/// </summary>
public static class Adiabatic
{
    /// <summary>
    /// k in A·√s/mm²: 60 °C rubber to 200 °C, 90 °C thermosetting to 250 °C. Null for 75 °C, which the table has not.
    /// </summary>
    /// <param name="temperatureClass">Of the cable.</param>
    public static double? K(TemperatureClass temperatureClass) => temperatureClass switch
    {
        TemperatureClass.Sixty => 141,
        TemperatureClass.Ninety => 143,
        _ => null,
    };

    /// <summary>What a device lets through in a time: <c>E = I² · t</c>, in A²s. Under 0.1 s only its maker knows.</summary>
    /// <param name="fault">I, A.</param>
    /// <param name="time">t, until it is open.</param>
    public static double LetThrough(ElectricCurrent fault, Duration time) => fault.Amperes * fault.Amperes * time.Seconds;

    /// <summary>The least section in mm²: <c>S = √E / k</c>.</summary>
    /// <param name="letThrough">E, A²s, 0 or more.</param>
    /// <param name="k">Of the conductor, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The energy is less than 0, or k not more than 0.</exception>
    public static double LeastSection(double letThrough, double k)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(letThrough);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(k);
        return Math.Sqrt(letThrough) / k;
    }
}
