using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// Current-carrying capacity of North American portable power cable (types SC, SCE, SCT, W and their like) in air of 30 °C.
/// Source: <see cref="Nec.Table400A2"/>. The value of a single core holds only while the singles lie apart; bundled ones are not in the table.
/// Terminations may carry less: <see cref="Terminations"/>.
/// </summary>
public static class PortableCables
{
    // AWG: A of one, two, three loaded conductors at 90, 75 and 60 °C; empty where blank.
    private static readonly Dictionary<string, (int[] Ninety, int[] SeventyFive, int[] Sixty)> Rows = new(StringComparer.Ordinal)
    {
        ["8"] = ([80, 74, 65], [70, 65, 57], []),
        ["6"] = ([105, 99, 87], [95, 88, 77], []),
        ["4"] = ([140, 130, 114], [125, 115, 101], [105, 96, 84]),
        ["2"] = ([190, 174, 152], [170, 152, 133], [140, 128, 112]),
        ["1"] = ([220, 202, 177], [], []),
        ["1/0"] = ([260, 234, 205], [230, 207, 181], [195, 173, 151]),
        ["2/0"] = ([300, 271, 237], [265, 238, 208], [225, 199, 174]),
        ["3/0"] = ([350, 313, 274], [310, 275, 241], [260, 230, 201]),
        ["4/0"] = ([405, 361, 316], [360, 317, 277], [300, 265, 232]),
    };

    /// <summary>
    /// What each conductor carries; null where the table is blank or was not to be had. For more than three loaded conductors it is the value
    /// for three, still to be multiplied by <see cref="MoreThanThree.Factor"/>.
    /// </summary>
    /// <param name="gauge">AWG, without the letters: <c>4/0</c>.</param>
    /// <param name="temperatureClass">Of the cable.</param>
    /// <param name="loaded">Conductors of the cable that carry current, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than one conductor.</exception>
    public static ElectricCurrent? Carries(string gauge, TemperatureClass temperatureClass, int loaded)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(loaded, 1);
        if (!Rows.TryGetValue(gauge, out var row))
        {
            return null;
        }

        var columns = temperatureClass switch
        {
            TemperatureClass.Ninety => row.Ninety,
            TemperatureClass.SeventyFive => row.SeventyFive,
            _ => row.Sixty,
        };
        return columns.Length == 0 ? null : ElectricCurrent.FromAmperes(columns[Math.Min(loaded, columns.Length) - 1]);
    }
}
