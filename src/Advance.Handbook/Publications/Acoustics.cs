using Advance.Domain.Figures;

namespace Advance.Handbook;

/// <summary>What follows from the physics of sound in air and needs no standard.</summary>
public static class Acoustics
{
    /// <summary>Speed of sound in dry air as an ideal gas, 331.3 m/s at 0 °C.</summary>
    public static readonly Publication SpeedOfSound = new("physics of an ideal gas", "", "speed of sound in dry air", Standing.Read);

    /// <summary>A path, a speed, a time; a wave's length and its frequency.</summary>
    public static readonly Publication Travel = new("physics of waves", "", "travel at constant speed", Standing.Read);

    /// <summary>Delays and polarity of subs that cancel to one side.</summary>
    public static readonly Publication Subs = new("physics of waves", "", "gradient and end-fire pairs", Standing.FromMemory);
}
