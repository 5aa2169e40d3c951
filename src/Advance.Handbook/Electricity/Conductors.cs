using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Handbook;

/// <summary>Resistance of copper conductors.</summary>
public static class Conductors
{
    /// <summary>By which share of its resistance at 20 °C copper gains a kelvin. Source: <see cref="Iec60228.Temperature"/>.</summary>
    public const double GainAt20 = 0.00393;

    /// <summary>By which share of its resistance at 75 °C copper gains a kelvin. Source: <see cref="Nec.Table8"/>.</summary>
    public const double GainAt75 = 0.00323;

    // mm²: plain, metal-coated, ohm/km.
    private static readonly SortedDictionary<double, (double Plain, double Tinned)> Class5Rows = new()
    {
        [0.5] = (39.0, 40.1),
        [0.75] = (26.0, 26.7),
        [1] = (19.5, 20.0),
        [1.5] = (13.3, 13.7),
        [2.5] = (7.98, 8.21),
        [4] = (4.95, 5.09),
        [6] = (3.30, 3.39),
        [10] = (1.91, 1.95),
        [16] = (1.21, 1.24),
        [25] = (0.780, 0.795),
        [35] = (0.554, 0.565),
        [50] = (0.386, 0.393),
        [70] = (0.272, 0.277),
        [95] = (0.206, 0.210),
        [120] = (0.161, 0.164),
        [150] = (0.129, 0.132),
        [185] = (0.106, 0.108),
        [240] = (0.0801, 0.0817),
        [300] = (0.0641, 0.0654),
        [400] = (0.0486, 0.0495),
    };

    // Ohm per 1000 ft, uncoated; the rows of 7-strand conductors, not the solid ones beside them.
    private static readonly Dictionary<string, double> StrandedRows = new(StringComparer.Ordinal)
    {
        ["18"] = 7.95,
        ["16"] = 4.99,
        ["14"] = 3.14,
        ["12"] = 1.98,
        ["10"] = 1.24,
        ["8"] = 0.778,
        ["6"] = 0.491,
        ["4"] = 0.308,
        ["3"] = 0.245,
        ["2"] = 0.194,
        ["1"] = 0.154,
        ["1/0"] = 0.122,
        ["2/0"] = 0.0967,
        ["3/0"] = 0.0766,
        ["4/0"] = 0.0608,
    };

    /// <summary>The sizes of the table of flexible conductors, mm², rising.</summary>
    public static IReadOnlyCollection<double> Class5Sizes => Class5Rows.Keys;

    /// <summary>
    /// The most that a flexible copper conductor has at 20 °C, direct current; null for a size that the table has not.
    /// Source: <see cref="Iec60228.Class5"/>.
    /// </summary>
    /// <param name="squareMillimetres">Nominal size: 2.5.</param>
    /// <param name="tinned">Whether the strands are metal-coated, as in rubber cables; the higher value, for when nobody knows.</param>
    public static ResistancePerLength? Class5(double squareMillimetres, bool tinned = true) =>
        Class5Rows.TryGetValue(squareMillimetres, out var row) ? ResistancePerLength.FromOhmsPerKilometre(tinned ? row.Tinned : row.Plain) : null;

    /// <summary>
    /// What a stranded uncoated copper conductor has at 75 °C, direct current; null for a size that the table has not. Source: <see cref="Nec.Table8"/>.
    /// </summary>
    /// <param name="gauge">AWG, without the letters: <c>12</c>, <c>2/0</c>.</param>
    public static ResistancePerLength? StrandedAt75(string gauge) =>
        StrandedRows.TryGetValue(gauge, out var ohms) ? ResistancePerLength.FromOhmsPerThousandFeet(ohms) : null;

    /// <summary>From 20 °C to another temperature: <c>r = r₂₀ · (1 + 0.00393 · (t - 20))</c>. Source: <see cref="Iec60228.Temperature"/>.</summary>
    /// <param name="at20">At 20 °C.</param>
    /// <param name="temperature">Of the conductor, not of the air: 60 °C for rubber cable fully loaded.</param>
    public static ResistancePerLength From20(ResistancePerLength at20, Temperature temperature) =>
        new(at20.OhmsPerMetre * (1 + (GainAt20 * (temperature.DegreesCelsius - 20))));

    /// <summary>From 75 °C to another temperature: <c>r = r₇₅ · (1 + 0.00323 · (t - 75))</c>. Source: <see cref="Nec.Table8"/>.</summary>
    /// <param name="at75">At 75 °C.</param>
    /// <param name="temperature">Of the conductor.</param>
    public static ResistancePerLength From75(ResistancePerLength at75, Temperature temperature) =>
        new(at75.OhmsPerMetre * (1 + (GainAt75 * (temperature.DegreesCelsius - 75))));

    /// <summary>Of one conductor of a length: <c>R = r · L</c>. Source: <see cref="CircuitTheory.Ohm"/>.</summary>
    /// <param name="perLength">Of one conductor.</param>
    /// <param name="length">Of the cable, one way, m.</param>
    public static ElectricResistance OneWay(ResistancePerLength perLength, Length length) => perLength.Of(length);

    /// <summary>There and back: <c>R = 2 · r · L</c>. Source: <see cref="CircuitTheory.Ohm"/>.</summary>
    /// <param name="perLength">Of one conductor.</param>
    /// <param name="length">Of the cable, one way, m.</param>
    public static ElectricResistance Loop(ResistancePerLength perLength, Length length) => 2 * perLength.Of(length);
}
