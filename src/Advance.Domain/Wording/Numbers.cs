using System.Globalization;

namespace Advance.Domain.Wording;

/// <summary>Numbers as printed: the point is the decimal sign, no grouping, no needless noughts.</summary>
public static class Numbers
{
    private static readonly string[] Formats = ["0", "0.#", "0.##", "0.###", "0.####"];

    // Sums of the same in another order differ in the last bits; a half stays a half however it came about.
    private const int Certain = 9;

    /// <summary>A number with at most so many decimals (0 to 4), halves away from zero; never <c>-0</c>.</summary>
    public static string Plain(double value, int decimals)
    {
        var rounded = Rounded(value, decimals);
        return (rounded == 0 ? 0 : rounded).ToString(Formats[decimals], CultureInfo.InvariantCulture);
    }

    /// <summary>A number to so many decimals (0 to 4), halves away from zero.</summary>
    public static double Rounded(double value, int decimals) => Math.Round(Math.Round(value, Certain, MidpointRounding.AwayFromZero), decimals, MidpointRounding.AwayFromZero);
}
