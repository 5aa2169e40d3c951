using System.Globalization;

namespace Advance.Handbook;

/// <summary>American wire gauge. Source: <see cref="AstmB258.Gauge"/>.</summary>
public static class WireGauge
{
    // 1/0 is gauge 0, and each further nought one less.
    private const string Noughts = "/0";

    /// <summary>The gauges of power cable, AWG without the letters, from thin to thick.</summary>
    public static readonly IReadOnlyList<string> Sizes = ["18", "16", "14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0"];

    /// <summary>Section in mm²: <c>S = π / 4 · (0.127 · 92^((36 - n) / 39))²</c>; null for what is none of <see cref="Sizes"/>.</summary>
    /// <param name="gauge">AWG, without the letters: <c>12</c>, <c>2/0</c>.</param>
    public static double? SquareMillimetres(string gauge) => Sizes.Contains(gauge) ? Section(Number(gauge)) : null;

    /// <summary>
    /// The thickest gauge that a metric conductor is at least as thick as, to look it up in North American tables on the safe side; null where
    /// it is thinner than all. 4 mm² counts as 12 AWG, 95 mm² as 3/0.
    /// </summary>
    /// <param name="squareMillimetres">Nominal size: 2.5.</param>
    public static string? Within(double squareMillimetres) => Sizes.LastOrDefault(gauge => Section(Number(gauge)) <= squareMillimetres);

    private static double Section(int number) => Math.PI / 4 * Math.Pow(0.127 * Math.Pow(92, (36 - number) / 39.0), 2);

    private static int Number(string gauge) => gauge.EndsWith(Noughts, StringComparison.Ordinal)
        ? 1 - int.Parse(gauge[..^Noughts.Length], CultureInfo.InvariantCulture)
        : int.Parse(gauge, CultureInfo.InvariantCulture);
}
