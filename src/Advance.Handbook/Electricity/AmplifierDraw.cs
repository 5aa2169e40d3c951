using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// What an audio amplifier draws from the mains. An eighth of full output is the normal operating power of <see cref="Iec60065.OperatingPower"/>
/// (9 dB of headroom), a third is constant clipping (FTC, worst programme). A sixteenth for speech, and a third for dance music and subs, are
/// common practice, no source. The shares heat wires; a protective device and the lowest supply voltage of a unit see the peaks.
/// </summary>
public static class AmplifierDraw
{
    /// <summary>Average output as a share of the rated output: 1/16, 1/8 or 1/3.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not one of the programmes.</exception>
    public static double ShareOf(Programme programme) => programme switch
    {
        Programme.Speech => 1.0 / 16,
        Programme.Music => 1.0 / 8,
        Programme.BassHeavy => 1.0 / 3,
        _ => throw new ArgumentOutOfRangeException(nameof(programme)),
    };

    /// <summary>Average output: <c>P = s · Pᵣ</c>. That is what leaves the amplifier, less than what it draws.</summary>
    /// <param name="rated">Rated output of all channels, W.</param>
    /// <param name="share">0 to 1; see <see cref="ShareOf"/>.</param>
    public static Power Output(Power rated, double share) => Power.FromWatts((double)rated.Watts * share);

    /// <summary>
    /// Drawn from the mains: <c>P = P₀ + s · Pᵣ / η</c>. A simple model, common practice; a maker's measured figure is better.
    /// Published measurements of one amplifier imply an efficiency beyond idle of 0.58 to 0.78, the lower the quieter it plays.
    /// </summary>
    /// <param name="idle">Drawn without a signal, W.</param>
    /// <param name="rated">Rated output of all channels, W.</param>
    /// <param name="share">0 to 1; see <see cref="ShareOf"/>.</param>
    /// <param name="efficiency">Of the output stage, more than 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The efficiency is outside its range.</exception>
    public static Power FromMains(Power idle, Power rated, double share, double efficiency)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(efficiency);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(efficiency, 1);
        return Power.FromWatts((double)idle.Watts + (share * (double)rated.Watts / efficiency));
    }

    /// <summary>Heat left in the rack: <c>H = P − Pₒ</c>.</summary>
    /// <param name="mains">Drawn, W.</param>
    /// <param name="output">Average output, W.</param>
    public static Power Heat(Power mains, Power output) => mains - output;
}
