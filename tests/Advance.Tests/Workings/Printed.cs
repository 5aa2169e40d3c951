using System.Globalization;

namespace Advance.Tests.Workings;

/// <summary>A value as a working prints it, read in the base units of formulas: m, kg, A, V, Ω, W, Hz, s, radian, per cent as a number.</summary>
/// <param name="Number">As printed.</param>
/// <param name="Factor">Base units in the unit behind it.</param>
/// <param name="Digits">How many digits are printed, from the first that is not 0.</param>
internal sealed record Printed(double Number, double Factor, int Digits)
{
    // Of noughts at the end, which are not printed, more than two in a row happen once in a thousand numbers that were rounded.
    private const int Noughts = 2;

    private static readonly Dictionary<string, double> Units = new(StringComparer.Ordinal)
    {
        [""] = 1,
        ["m"] = 1,
        ["mm"] = 0.001,
        ["km"] = 1000,
        ["kg"] = 1,
        ["g"] = 0.001,
        ["A"] = 1,
        ["mA"] = 0.001,
        ["V"] = 1,
        ["mV"] = 0.001,
        ["Ω"] = 1,
        ["mΩ"] = 0.001,
        ["kΩ"] = 1000,
        ["Ω/m"] = 1,
        ["mΩ/m"] = 0.001,
        ["W"] = 1,
        ["kW"] = 1000,
        ["VA"] = 1,
        ["Hz"] = 1,
        ["kHz"] = 1000,
        ["s"] = 1,
        ["ms"] = 0.001,
        ["min"] = 60,
        ["h"] = 3600,
        ["°"] = Math.PI / 180,
        ["%"] = 1,
        ["m/s"] = 1,
        ["°C"] = 1,
        ["m²"] = 1,
        ["m³"] = 1,
        ["N"] = 1,
        ["kN"] = 1000,
        ["N·m"] = 1,
        ["Pa"] = 1,
        ["kg/m"] = 1,
        ["dB"] = 1,
    };

    /// <summary>In base units.</summary>
    public double Value => Number * Factor;

    /// <summary>One value, or the terms of a list, which is printed as a sum.</summary>
    /// <exception cref="FormulaFault">Not a number with a unit that is known.</exception>
    public static IReadOnlyList<Printed> Read(string text) => [.. text.Split(" + ").Select(One)];

    /// <summary>
    /// Half a unit in the last of so many digits, in base units. Noughts at the end are not printed, so that is not the last place of the text.
    /// </summary>
    public double HalfUnit(int digits) =>
        Number == 0 ? 0 : 0.5 * Factor * Math.Pow(10, Math.Min(0, Math.Floor(Math.Log10(Math.Abs(Number))) - digits + 1));

    /// <summary>How far the value may be from what was printed to so many digits: nothing where far fewer digits said it all.</summary>
    public double Rounding(int digits) => Digits < digits - Noughts ? 0 : HalfUnit(digits);

    private static Printed One(string text)
    {
        var end = 0;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] is '.' or '-'))
        {
            end++;
        }

        return double.TryParse(text.AsSpan(0, end), CultureInfo.InvariantCulture, out var number) && Units.TryGetValue(text[end..].Trim(), out var factor)
            ? new Printed(number, factor, text[..end].TrimStart('-', '0', '.').Count(char.IsAsciiDigit))
            : throw new FormulaFault($"\"{text}\" is not a number with a unit");
    }
}
