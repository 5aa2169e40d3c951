using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// Current-carrying capacity of North American flexible cords (types S, SO, SOW, SOO, SOOW, SJ…, ST…, SJT…) in air of 30 °C.
/// Source: <see cref="Nec.Table400A1"/>. Cords are of 60 °C unless marked otherwise, and this table does not rise with the class. A cord with ends of 30 A
/// may carry less: 10 AWG with three loaded conductors 25 A.
/// </summary>
public static class Cords
{
    // AWG: column A, three loaded conductors; column B, two.
    private static readonly Dictionary<string, (int Three, int Two)> Rows = new(StringComparer.Ordinal)
    {
        ["18"] = (7, 10),
        ["16"] = (10, 13),
        ["14"] = (15, 18),
        ["12"] = (20, 25),
        ["10"] = (25, 30),
        ["8"] = (35, 40),
        ["6"] = (45, 55),
        ["4"] = (60, 70),
        ["2"] = (80, 95),
    };

    /// <summary>
    /// What each conductor carries; null for a size that the table has not. For more than three loaded conductors it is the value for three,
    /// still to be multiplied by <see cref="MoreThanThree.Factor"/>.
    /// </summary>
    /// <param name="gauge">AWG, without the letters: <c>12</c>.</param>
    /// <param name="loaded">Conductors that carry current, at least 1; the equipment earth is none.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than one conductor.</exception>
    public static ElectricCurrent? Carries(string gauge, int loaded)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(loaded, 1);
        return Rows.TryGetValue(gauge, out var row) ? ElectricCurrent.FromAmperes(loaded <= 2 ? row.Two : row.Three) : null;
    }
}
