using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// What circuit-breakers of types B and C to 32 A let through of a large fault, A²s, by energy limiting class 3. Source:
/// <see cref="Iec60898.EnergyClass"/>. That breakers without a mark are of class 3, and that one of a higher breaking capacity lets through no more of a
/// lesser fault than one of a lower, is common practice, no source; its maker's curve decides.
/// </summary>
public static class BreakerEnergy
{
    private const double Small = 16;
    private const double Large = 32;

    // Fault A: to 16 A type B and C, to 32 A type B and C.
    private static readonly (double Fault, double SmallB, double SmallC, double LargeB, double LargeC)[] Rows =
    [
        (3000, 15000, 18000, 18000, 22000),
        (4500, 25000, 30000, 32000, 39000),
        (6000, 35000, 42000, 45000, 55000),
        (10000, 70000, 84000, 90000, 110000),
    ];

    /// <summary>The most, A²s; null for type D, above 32 A and above 10 kA.</summary>
    /// <param name="type">Of the breaker.</param>
    /// <param name="rated">Its rating, A.</param>
    /// <param name="fault">The largest current that may come, A.</param>
    public static double? Most(BreakerType type, ElectricCurrent rated, ElectricCurrent fault)
    {
        if (type == BreakerType.D || rated.Amperes > Large || !Rows.Any(one => fault.Amperes <= one.Fault))
        {
            return null;
        }

        var row = Rows.First(one => fault.Amperes <= one.Fault);
        return (rated.Amperes <= Small, type) switch
        {
            (true, BreakerType.B) => row.SmallB,
            (true, _) => row.SmallC,
            (false, BreakerType.B) => row.LargeB,
            (false, _) => row.LargeC,
        };
    }
}
