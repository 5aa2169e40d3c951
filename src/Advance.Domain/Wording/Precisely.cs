using System.Globalization;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Domain.Wording;

/// <summary>
/// Says values as workings print them: in units of the SI (with milli where a value is small), results to six digits and inputs to nine, so
/// that a formula put in with what is printed gives what is printed. The same on metric and on other paper.
/// </summary>
public static class Precisely
{
    /// <summary>Digits of a result.</summary>
    public const int ResultDigits = 6;

    /// <summary>Digits of an input: more, so that its rounding is not seen in the result.</summary>
    public const int InputDigits = 9;

    private const int MostDecimals = 15;

    /// <summary>A number, a quantity, or a list of them as a sum.</summary>
    /// <exception cref="NotSupportedException">A kind of value that no working holds yet: a bug.</exception>
    public static string Say(object value) => Say(value, ResultDigits);

    /// <summary>The same to as many digits as what is put into a formula.</summary>
    /// <exception cref="NotSupportedException">A kind of value that no working holds yet: a bug.</exception>
    public static string SayInput(object value) => Say(value, InputDigits);

    private static string Say(object value, int digits) => value switch
    {
        int whole => whole.ToString(CultureInfo.InvariantCulture),
        double number => Number(number, digits),
        ITerms terms => terms.Objects.Any() ? string.Join(" + ", terms.Objects.Select(term => Say(term, digits))) : "0",
        Length length => $"{Number(length.Meters, digits)} m",
        Mass mass => $"{Number(mass.Kilograms, digits)} kg",
        ElectricCurrent current => Scaled(current.Amperes, "A", digits),
        ElectricPotential potential => $"{Number(potential.Volts, digits)} V",
        ElectricResistance resistance => Scaled(resistance.Ohms, "Ω", digits),
        Power power => $"{Number((double)power.Watts, digits)} W",
        Frequency frequency => $"{Number(frequency.Hertz, digits)} Hz",
        Duration duration => Scaled(duration.Seconds, "s", digits),
        Angle angle => $"{Number(angle.Degrees, digits)}°",
        Ratio ratio => $"{Number(ratio.Percent, digits)} %",
        Speed speed => $"{Number(speed.MetersPerSecond, digits)} m/s",
        Temperature temperature => $"{Number(temperature.DegreesCelsius, digits)} °C",
        Area area => $"{Number(area.SquareMeters, digits)} m²",
        Volume volume => $"{Number(volume.CubicMeters, digits)} m³",
        Force force => $"{Number(force.Newtons, digits)} N",
        Torque torque => $"{Number(torque.NewtonMeters, digits)} N·m",
        Pressure pressure => $"{Number(pressure.Pascals, digits)} Pa",
        LinearDensity density => $"{Number(density.KilogramsPerMeter, digits)} kg/m",
        ElectricApparentPower apparent => $"{Number(apparent.Voltamperes, digits)} VA",
        Level level => $"{Number(level.Decibels, digits)} dB",
        ResistancePerLength perLength => Scaled(perLength.OhmsPerMetre, "Ω/m", digits),
        _ => throw new NotSupportedException($"No way to say a {value.GetType().Name} precisely."),
    };

    private static string Scaled(double value, string unit, int digits) =>
        value != 0 && Math.Abs(value) < 0.1 ? $"{Number(value * 1000, digits)} m{unit}" : $"{Number(value, digits)} {unit}";

    // So many digits in all, but whole numbers whole; never an exponent, never -0.
    private static string Number(double value, int digits)
    {
        if (!double.IsFinite(value))
        {
            return value.ToString(CultureInfo.InvariantCulture);
        }

        var decimals = value == 0 ? 0 : Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, MostDecimals);
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.###############", CultureInfo.InvariantCulture);
    }
}
