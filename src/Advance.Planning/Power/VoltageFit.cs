using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Whether a thing may hang on a supply. A supply may lie a twentieth outside the voltages marked: common practice, no source.</summary>
internal static class VoltageFit
{
    private const double Tolerance = 0.05;

    /// <summary>The voltage that a thing would get: between lines for a three-phase thing marked so, else to neutral; null where unknown.</summary>
    public static ElectricPotential? Given(Supply? gives, Supply takes) => gives is null ? null
        : takes is { Phases: Phases.Three, BetweenLines: null } ? gives.BetweenLines : gives.Voltages[0].Least;

    /// <summary>Whether the voltage is one it takes; null where one of them is unknown.</summary>
    public static bool? Volts(Supply? gives, Supply? takes) => takes is null || Given(gives, takes) is not { } volts
        ? null
        : takes.Voltages.Any(range => volts.Volts >= range.Least.Volts * (1 - Tolerance) && volts.Volts <= range.Most.Volts * (1 + Tolerance));

    /// <summary>Whether the frequency is one it takes; null where one of them is unknown.</summary>
    public static bool? Hertz(Supply? gives, Supply? takes) => takes is null || gives is null || takes.Frequencies.Count == 0 || gives.Frequencies.Count == 0
        ? null
        : gives.Frequencies.All(frequency => takes.Frequencies.Any(taken => taken.Hertz == frequency.Hertz));
}
