using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// Current-carrying capacity of flexible cable, as used for mains leads and feeders, in free air of 30 °C, unrolled and not grouped, and voltage
/// drop of that of 60 °C. Rubber of 60 °C stands below 4 mm² in <see cref="Bs7671.Table4F3A"/> and <see cref="Bs7671.Table4F3B"/>, from 4 mm² in
/// <see cref="Bs7671.Table4F1A"/> and <see cref="Bs7671.Table4F1B"/>; 90 °C thermosetting from 4 mm² in <see cref="Bs7671.Table4F2A"/>, and carries more, but
/// terminations and connectors may not. Other bodies tabulate other values: German 26 A for three loaded cores of 2.5 mm² where these give 20 A.
/// </summary>
public static class FlexibleCables
{
    private const double FirstOf4F1 = 4;

    // mm²: A of one 2-core or 3-core with earth, A of one 3-, 4- or 5-core on three phases, A of two single cores touching; 0 where blank.
    private static readonly SortedDictionary<double, (int OnePhase, int ThreePhase, int Singles)> Capacity60 = new()
    {
        [0.5] = (3, 3, 0),
        [0.75] = (6, 6, 0),
        [1] = (10, 10, 0),
        [1.25] = (13, 0, 0),
        [1.5] = (16, 16, 0),
        [2.5] = (25, 20, 0),
        [4] = (30, 26, 0),
        [6] = (39, 34, 0),
        [10] = (51, 47, 0),
        [16] = (73, 63, 0),
        [25] = (97, 83, 0),
        [35] = (0, 102, 140),
        [50] = (0, 124, 175),
        [70] = (0, 158, 216),
        [95] = (0, 192, 258),
        [120] = (0, 222, 302),
        [150] = (0, 255, 347),
        [185] = (0, 291, 394),
        [240] = (0, 343, 471),
    };

    // The same of 90 °C; smaller sizes stand in a table that was not to be had.
    private static readonly Dictionary<double, (int OnePhase, int ThreePhase, int Singles)> Capacity90 = new()
    {
        [4] = (42, 37, 0),
        [6] = (55, 49, 0),
        [10] = (76, 66, 0),
        [16] = (103, 89, 0),
        [25] = (136, 119, 0),
        [35] = (0, 146, 200),
        [50] = (0, 177, 250),
        [70] = (0, 225, 310),
        [95] = (0, 273, 369),
        [120] = (0, 316, 432),
        [150] = (0, 363, 497),
        [185] = (0, 414, 567),
        [240] = (0, 487, 673),
    };

    // mm²: mV/A/m of the same three, 60 °C; impedance z where the table has r, x and z; 0 where blank.
    private static readonly SortedDictionary<double, (double OnePhase, double ThreePhase, double Singles)> Drop = new()
    {
        [0.5] = (93, 80, 0),
        [0.75] = (62, 54, 0),
        [1] = (46, 40, 0),
        [1.25] = (37, 0, 0),
        [1.5] = (32, 27, 0),
        [2.5] = (19, 16, 0),
        [4] = (12, 10, 0),
        [6] = (7.8, 6.7, 0),
        [10] = (4.6, 4.0, 0),
        [16] = (2.9, 2.5, 0),
        [25] = (1.85, 1.55, 0),
        [35] = (0, 1.15, 1.32),
        [50] = (0, 0.84, 0.93),
        [70] = (0, 0.58, 0.67),
        [95] = (0, 0.44, 0.53),
        [120] = (0, 0.36, 0.43),
        [150] = (0, 0.30, 0.36),
        [185] = (0, 0.26, 0.32),
        [240] = (0, 0.21, 0.27),
    };

    /// <summary>The sizes of the tables, mm², rising.</summary>
    public static IReadOnlyCollection<double> Sizes => Capacity60.Keys;

    /// <summary>What a single-phase lead carries: two loaded cores; null where the table is blank.</summary>
    /// <param name="squareMillimetres">Nominal size: 2.5.</param>
    /// <param name="temperatureClass">Of the cable; that of a cable that says nothing if left out.</param>
    public static ElectricCurrent? OnePhase(double squareMillimetres, TemperatureClass temperatureClass = TemperatureClass.Sixty) =>
        Amperes(Row(squareMillimetres, temperatureClass).OnePhase);

    /// <summary>What each line of a three-phase lead carries: three loaded cores; null where the table is blank.</summary>
    /// <param name="squareMillimetres">Nominal size: 16.</param>
    /// <param name="temperatureClass">Of the cable; that of a cable that says nothing if left out.</param>
    public static ElectricCurrent? ThreePhase(double squareMillimetres, TemperatureClass temperatureClass = TemperatureClass.Sixty) =>
        Amperes(Row(squareMillimetres, temperatureClass).ThreePhase);

    /// <summary>What two single cores that touch carry, one phase; null where the table is blank.</summary>
    /// <param name="squareMillimetres">Nominal size: 95.</param>
    /// <param name="temperatureClass">Of the cable; that of a cable that says nothing if left out.</param>
    public static ElectricCurrent? TwoSingles(double squareMillimetres, TemperatureClass temperatureClass = TemperatureClass.Sixty) =>
        Amperes(Row(squareMillimetres, temperatureClass).Singles);

    /// <summary>Drop per ampere and metre of a single-phase lead, both conductors, hot; null where the table is blank.</summary>
    /// <param name="squareMillimetres">Nominal size: 2.5.</param>
    public static ResistancePerLength? DropOnePhase(double squareMillimetres) => PerMetre(Drop.GetValueOrDefault(squareMillimetres).OnePhase);

    /// <summary>Drop between lines per ampere and metre of a balanced three-phase lead, hot; null where the table is blank.</summary>
    /// <param name="squareMillimetres">Nominal size: 16.</param>
    public static ResistancePerLength? DropThreePhase(double squareMillimetres) => PerMetre(Drop.GetValueOrDefault(squareMillimetres).ThreePhase);

    /// <summary>Drop per ampere and metre of two single cores that touch, one phase, hot; null where the table is blank.</summary>
    /// <param name="squareMillimetres">Nominal size: 95.</param>
    public static ResistancePerLength? DropTwoSingles(double squareMillimetres) => PerMetre(Drop.GetValueOrDefault(squareMillimetres).Singles);

    /// <summary>The table of current-carrying capacity that a size stands in.</summary>
    public static Domain.Figures.Publication CapacityTable(double squareMillimetres, TemperatureClass temperatureClass = TemperatureClass.Sixty) =>
        temperatureClass == TemperatureClass.Ninety ? Bs7671.Table4F2A : squareMillimetres < FirstOf4F1 ? Bs7671.Table4F3A : Bs7671.Table4F1A;

    /// <summary>The table of voltage drop that a size stands in.</summary>
    public static Domain.Figures.Publication DropTable(double squareMillimetres) =>
        squareMillimetres < FirstOf4F1 ? Bs7671.Table4F3B : Bs7671.Table4F1B;

    // 75 °C is a North American class: what lies below it is safe.
    private static (int OnePhase, int ThreePhase, int Singles) Row(double squareMillimetres, TemperatureClass temperatureClass) =>
        temperatureClass == TemperatureClass.Ninety ? Capacity90.GetValueOrDefault(squareMillimetres) : Capacity60.GetValueOrDefault(squareMillimetres);

    private static ElectricCurrent? Amperes(int value) => value == 0 ? null : ElectricCurrent.FromAmperes(value);

    private static ResistancePerLength? PerMetre(double value) => value == 0 ? null : ResistancePerLength.FromMillivoltsPerAmpereMetre(value);
}
