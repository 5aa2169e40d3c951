using UnitsNet;

namespace Advance.Handbook;

/// <summary>What opens fuses in time. Source: <see cref="Bs7671.FuseLoops"/>, which gives the loop impedance at 230 V with Cmin.</summary>
public static class Fuses
{
    private const double TabulatedVolts = 230;
    private const double FastSeconds = 0.4;
    private const double SlowSeconds = 5;

    // A: ohm for 0.4 s (0 where blank), ohm for 5 s.
    private static readonly Dictionary<double, (double Fast, double Slow)> GeneralPurpose = new()
    {
        [2] = (33.1, 44),
        [4] = (15.6, 21),
        [6] = (7.8, 12),
        [10] = (4.65, 6.8),
        [16] = (2.43, 4.0),
        [20] = (1.68, 2.8),
        [25] = (1.29, 2.2),
        [32] = (0.99, 1.7),
        [40] = (0.75, 1.3),
        [50] = (0.57, 0.99),
        [63] = (0.44, 0.78),
        [80] = (0, 0.55),
        [100] = (0, 0.42),
        [125] = (0, 0.32),
        [160] = (0, 0.27),
        [200] = (0, 0.18),
    };

    private static readonly Dictionary<double, (double Fast, double Slow)> Plug = new()
    {
        [3] = (15.6, 22),
        [13] = (2.3, 3.64),
    };

    /// <summary>
    /// Loop impedance with which a fuse still opens, at 230 V to earth; null where the tables have no such rating, or no time as short.
    /// Between 0.4 s and 5 s the value for 0.4 s holds.
    /// </summary>
    /// <param name="type">Of the fuse.</param>
    /// <param name="rated">Its rating, A.</param>
    /// <param name="within">Time allowed.</param>
    public static ElectricResistance? Loop(FuseType type, ElectricCurrent rated, Duration within)
    {
        var table = type == FuseType.Plug ? Plug : GeneralPurpose;
        var row = table.GetValueOrDefault(Math.Round(rated.Amperes, 6, MidpointRounding.AwayFromZero));
        var ohms = within.Seconds switch
        {
            >= SlowSeconds => row.Slow,
            >= FastSeconds => row.Fast,
            _ => 0,
        };
        return ohms == 0 ? null : ElectricResistance.FromOhms(ohms);
    }

    /// <summary>Ia behind a tabulated loop impedance: <c>I = 0.95 · 230 / Z</c>.</summary>
    /// <param name="loop">As tabulated, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The impedance is not more than 0.</exception>
    public static ElectricCurrent Operating(ElectricResistance loop)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(loop.Ohms);
        return ElectricCurrent.FromAmperes(FaultLoop.LeastVoltage * TabulatedVolts / loop.Ohms);
    }
}
