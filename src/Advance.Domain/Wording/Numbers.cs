using System.Globalization;

namespace Advance.Domain.Wording;

/// <summary>Numbers as printed: the point is the decimal sign, no grouping, no needless noughts.</summary>
public static class Numbers
{
    private static readonly string[] Formats = ["0", "0.#", "0.##", "0.###", "0.####"];

    /// <summary>A number with at most so many decimals (0 to 4), halves away from zero; never <c>-0</c>.</summary>
    public static string Plain(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString(Formats[decimals], CultureInfo.InvariantCulture);
    }
}
