using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// What cable carries in warmer air than the 30 °C of the tables. Source: <see cref="Bs7671.Table4B1"/>, <see cref="Nec.Table310Ambient"/>;
/// both are this formula, rounded.
/// </summary>
public static class AmbientTemperature
{
    /// <summary>The air of the tables, °C.</summary>
    public const double OfTables = 30;

    // The last rows stand five kelvin under the conductor's own temperature.
    private const double Margin = 5;

    /// <summary>
    /// What the tabulated current-carrying capacity is multiplied by: <c>Ca = √((θ - t) / (θ - 30))</c>. Never more than 1: cooler air is
    /// not counted on. Null where it is hotter than the tables go, to 5 K under the class: such cable is not to be used there.
    /// </summary>
    /// <param name="temperatureClass">θ, of the conductor.</param>
    /// <param name="air">t, of the air around the cable, at a truss under a roof or beneath a ramp too.</param>
    public static double? Factor(TemperatureClass temperatureClass, Temperature air)
    {
        var (most, around) = ((double)temperatureClass, air.DegreesCelsius);
        return around > most - Margin + 1e-9 ? null : Math.Min(1, Math.Sqrt((most - around) / (most - OfTables)));
    }
}
