using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// What a North American termination lets a conductor carry, whatever its cable is good for: the column of its own temperature class.
/// Source: <see cref="Nec.Table310"/> by <see cref="Nec.TerminationTemperature"/>. A connector listed for more is excepted, so exceeding it calls for a look at the
/// listing.
/// </summary>
public static class Terminations
{
    // AWG: A at 60 °C, A at 75 °C.
    private static readonly Dictionary<string, (int Sixty, int SeventyFive)> Rows = new(StringComparer.Ordinal)
    {
        ["14"] = (15, 20),
        ["12"] = (20, 25),
        ["10"] = (30, 35),
        ["8"] = (40, 50),
        ["6"] = (55, 65),
        ["4"] = (70, 85),
        ["3"] = (85, 100),
        ["2"] = (95, 115),
        ["1"] = (110, 130),
        ["1/0"] = (125, 150),
        ["2/0"] = (145, 175),
        ["3/0"] = (165, 200),
        ["4/0"] = (195, 230),
    };

    /// <summary>The most through a lug of 60 °C or 75 °C; null for other classes and for a size that the table has not.</summary>
    /// <param name="gauge">AWG, without the letters: <c>4/0</c>.</param>
    /// <param name="temperatureClass">Of the termination: 60 °C to 100 A where nothing is marked, else 75 °C.</param>
    public static ElectricCurrent? Carry(string gauge, TemperatureClass temperatureClass) => (Rows.TryGetValue(gauge, out var row), temperatureClass) switch
    {
        (true, TemperatureClass.Sixty) => ElectricCurrent.FromAmperes(row.Sixty),
        (true, TemperatureClass.SeventyFive) => ElectricCurrent.FromAmperes(row.SeventyFive),
        _ => null,
    };
}
