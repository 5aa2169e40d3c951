namespace Advance.Handbook;

/// <summary>
/// How a four- or five-core cable with all conductors alike is sized where line currents hold a third harmonic. Not for split phase.
/// Source: <see cref="Iec60364.AnnexE"/>.
/// </summary>
/// <param name="Factor">What the tabulated current-carrying capacity is multiplied by.</param>
/// <param name="OnNeutral">Whether the cable is chosen by the neutral current instead of the line current.</param>
public readonly record struct HarmonicSizing(double Factor, bool OnNeutral)
{
    /// <summary>The row of the table for so much third harmonic: limits belong to the row below them.</summary>
    /// <param name="percent">Third harmonic, per cent of the line's whole current (not of its fundamental), 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than nothing.</exception>
    public static HarmonicSizing For(double percent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(percent);
        return percent switch
        {
            <= 15 => new(1, OnNeutral: false),
            <= 33 => new(0.86, OnNeutral: false),
            <= 45 => new(0.86, OnNeutral: true),
            _ => new(1, OnNeutral: true),
        };
    }
}
