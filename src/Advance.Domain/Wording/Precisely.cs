using System.Globalization;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Domain.Wording;

/// <summary>
/// Says values as workings print them: in units of the SI (with milli where a value is small), to six digits, so that a formula put in with
/// what is printed gives what is printed. The same on metric and on other paper.
/// </summary>
public static class Precisely
{
    private const int Digits = 6;

    /// <summary>A number, a quantity, or a list of them as a sum.</summary>
    /// <exception cref="NotSupportedException">A kind of value that no working holds yet: a bug.</exception>
    public static string Say(object value) => value switch
    {
        int whole => whole.ToString(CultureInfo.InvariantCulture),
        double number => Number(number),
        ITerms terms => string.Join(" + ", terms.Objects.Select(Say)),
        Length length => $"{Number(length.Meters)} m",
        Mass mass => $"{Number(mass.Kilograms)} kg",
        ElectricCurrent current => Scaled(current.Amperes, "A"),
        ElectricPotential potential => $"{Number(potential.Volts)} V",
        ElectricResistance resistance => Scaled(resistance.Ohms, "Ω"),
        Power power => $"{Number((double)power.Watts)} W",
        Frequency frequency => $"{Number(frequency.Hertz)} Hz",
        Duration duration => Scaled(duration.Seconds, "s"),
        Angle angle => $"{Number(angle.Degrees)}°",
        Ratio ratio => $"{Number(ratio.Percent)} %",
        Speed speed => $"{Number(speed.MetersPerSecond)} m/s",
        Temperature temperature => $"{Number(temperature.DegreesCelsius)} °C",
        _ => throw new NotSupportedException($"No way to say a {value.GetType().Name} precisely."),
    };

    private static string Scaled(double value, string unit) =>
        value != 0 && Math.Abs(value) < 0.1 ? $"{Number(value * 1000)} m{unit}" : $"{Number(value)} {unit}";

    // Six digits in all, but whole numbers whole; never an exponent, never -0.
    private static string Number(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value == 0 ? "0" : value.ToString(CultureInfo.InvariantCulture);
        }

        var decimals = Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 12);
        return Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("0.############", CultureInfo.InvariantCulture);
    }
}
