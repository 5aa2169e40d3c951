using UnitsNet;

namespace Advance.Handbook;

/// <summary>How long sound is on its way. Source: <see cref="Acoustics.Travel"/>. A start value: the ear has the last word.</summary>
public static class Delays
{
    /// <summary>For a path: <c>τ = d / c</c>.</summary>
    /// <param name="path">m.</param>
    /// <param name="speed">Of sound, m/s, more than 0; see <see cref="SoundSpeed"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The speed is not more than 0.</exception>
    public static Duration Over(Length path, Speed speed)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(speed.MetersPerSecond);
        return Duration.FromSeconds(path.Meters / speed.MetersPerSecond);
    }

    /// <summary>
    /// By how much the nearer source is held back so that both arrive together: <c>τ = (f - n) / c</c>; negative where the other one must wait.
    /// What is added so that the first arrival stays the main system is a policy of its own.
    /// </summary>
    /// <param name="far">Path from the source that leads, m.</param>
    /// <param name="near">Path from the source that is delayed, m.</param>
    /// <param name="speed">Of sound, m/s, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The speed is not more than 0.</exception>
    public static Duration Between(Length far, Length near, Speed speed) => Over(far - near, speed);

    /// <summary>The path that sound makes in a time: <c>d = c · τ</c>.</summary>
    /// <param name="delay">s.</param>
    /// <param name="speed">Of sound, m/s.</param>
    public static Length Path(Duration delay, Speed speed) => Length.FromMeters(delay.Seconds * speed.MetersPerSecond);
}
