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
        : Takes(takes, volts);

    /// <summary>Whether a thing takes the voltage between two lines of a supply, and not that to neutral.</summary>
    public static bool IsBetweenOnly(Supply? gives, Supply takes) => gives?.BetweenLines is { } lines && !Takes(takes, gives.Voltages[0].Least) && Takes(takes, lines);

    /// <summary>What comes out between two lines, for something on one phase.</summary>
    public static Supply Between(Supply gives)
    {
        var times = gives.Phases == Phases.Split ? 2 : Math.Sqrt(3);
        return new Supply([.. gives.Voltages.Select(range => gives.BetweenLines is { } lines ? new VoltageRange(lines, lines) : new VoltageRange(range.Least * times, range.Most * times))], null, Phases.Single, gives.Frequencies);
    }

    /// <summary>Whether the frequency is one it takes; null where one of them is unknown.</summary>
    public static bool? Hertz(Supply? gives, Supply? takes) => takes is null || gives is null || takes.Frequencies.Count == 0 || gives.Frequencies.Count == 0
        ? null
        : gives.Frequencies.All(frequency => takes.Frequencies.Any(taken => taken.Hertz == frequency.Hertz));

    private static bool Takes(Supply takes, ElectricPotential volts) =>
        takes.Voltages.Any(range => volts.Volts >= range.Least.Volts * (1 - Tolerance) && volts.Volts <= range.Most.Volts * (1 + Tolerance));
}
