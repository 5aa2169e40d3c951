using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// A spacing and the frequency for which it is a quarter of a wave. Source: <see cref="Acoustics.Travel"/>. A pair of subs is spaced for the
/// arithmetic mean of its band, not the geometric one.
/// </summary>
public static class QuarterWave
{
    /// <summary><c>f = c / (4 · d)</c>.</summary>
    /// <param name="spacing">m, more than 0.</param>
    /// <param name="speed">Of sound, m/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not more than 0.</exception>
    public static Frequency FrequencyOf(Length spacing, Speed speed)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spacing.Meters);
        return Frequency.FromHertz(speed.MetersPerSecond / (4 * spacing.Meters));
    }

    /// <summary><c>d = c / (4 · f)</c>.</summary>
    /// <param name="frequency">Hz, more than 0.</param>
    /// <param name="speed">Of sound, m/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not more than 0.</exception>
    public static Length SpacingFor(Frequency frequency, Speed speed)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(frequency.Hertz);
        return Length.FromMeters(speed.MetersPerSecond / (4 * frequency.Hertz));
    }
}
