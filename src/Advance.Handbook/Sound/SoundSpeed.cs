using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// Speed of sound in dry air. Source: <see cref="Acoustics.SpeedOfSound"/>. Moist air is 0.1 to 0.6 % faster.
/// </summary>
public static class SoundSpeed
{
    /// <summary><c>c = 331.3 · √(1 + T / 273.15)</c>.</summary>
    /// <param name="air">Temperature of the air, °C, above absolute zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Colder than absolute zero.</exception>
    public static Speed In(Temperature air)
    {
        var warmth = 1 + (air.DegreesCelsius / 273.15);
        ArgumentOutOfRangeException.ThrowIfNegative(warmth);
        return Speed.FromMetersPerSecond(331.3 * Math.Sqrt(warmth));
    }
}
