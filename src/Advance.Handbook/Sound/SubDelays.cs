using UnitsNet;

namespace Advance.Handbook;

/// <summary>Delays of subs that cancel behind them. Source: <see cref="Acoustics.Subs"/>. Delay alone replaces neither polarity nor geometry.</summary>
public static class SubDelays
{
    /// <summary>
    /// For the rear unit of a gradient pair, or a box that faces backwards in a stack: <c>τ = d / c</c>. Its polarity is <b>reversed</b>.
    /// </summary>
    /// <param name="spacing">From the front unit's acoustic centre to the rear one's, m.</param>
    /// <param name="speed">Of sound, m/s, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The speed is not more than 0.</exception>
    public static Duration Gradient(Length spacing, Speed speed) => Delays.Over(spacing, speed);

    /// <summary>
    /// For a unit of an end-fire line, all facing forward: <c>τ = n · d / c</c>. Polarity is <b>normal</b>; the rearmost is not delayed.
    /// </summary>
    /// <param name="place">How many units are behind it, 0 for the rearmost.</param>
    /// <param name="spacing">From one unit to the next, m.</param>
    /// <param name="speed">Of sound, m/s, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is negative, or the speed is not more than 0.</exception>
    public static Duration EndFire(int place, Length spacing, Speed speed)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(place);
        return place * Delays.Over(spacing, speed);
    }
}
