using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// The North American rule for loads that are on for three hours or more. Source: <see cref="Nec.ContinuousLoad"/>. IEC and BS rules have no
/// such factor. An assembly listed for 100 % is excepted, and so is a feeder neutral that does not land on a protective device.
/// </summary>
public static class ContinuousLoad
{
    /// <summary>By how much a continuous load counts more.</summary>
    public const double Factor = 1.25;

    /// <summary>What device and conductor (before adjustment factors) must be good for: <c>I = N + 1.25 · C</c>.</summary>
    /// <param name="nonContinuous">On for less than three hours, A.</param>
    /// <param name="continuous">On for three hours or more, A.</param>
    public static ElectricCurrent Required(ElectricCurrent nonContinuous, ElectricCurrent continuous) =>
        ElectricCurrent.FromAmperes(nonContinuous.Amperes + (Factor * continuous.Amperes));

    /// <summary>The most continuous load that a device may carry alone: <c>C = I / 1.25</c>, 80 % of it.</summary>
    /// <param name="device">Rating of the protective device, A.</param>
    public static ElectricCurrent MostOn(ElectricCurrent device) => ElectricCurrent.FromAmperes(device.Amperes / Factor);
}
