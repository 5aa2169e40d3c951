using UnitsNet;

namespace Advance.Handbook;

/// <summary>When circuit-breakers open at once. Source: <see cref="Iec60898.Instantaneous"/>.</summary>
public static class Breakers
{
    /// <summary>At its sure instantaneous current a breaker has opened within this. Source: <see cref="Iec60898.Time"/>.</summary>
    public static readonly Duration AtOnce = Duration.FromSeconds(0.1);

    /// <summary>The type that a device as written begins with: C of <c>C16</c>; null for fuses and others.</summary>
    /// <param name="device">As written in the stock.</param>
    public static BreakerType? TypeOf(string device) => device.Length < 2 || !char.IsAsciiDigit(device[1]) ? null : device[0] switch
    {
        'B' => BreakerType.B,
        'C' => BreakerType.C,
        'D' => BreakerType.D,
        _ => null,
    };

    /// <summary>
    /// Below so many times its rating a breaker does not open at once: what inrush may come to, as root mean square.
    /// </summary>
    /// <param name="type">Of the breaker.</param>
    public static int HoldsBelow(BreakerType type) => type switch
    {
        BreakerType.B => 3,
        BreakerType.C => 5,
        _ => 10,
    };

    /// <summary>From so many times its rating a breaker surely opens at once: Ia of a fault, for every time that is allowed.</summary>
    /// <param name="type">Of the breaker.</param>
    public static int OpensFrom(BreakerType type) => type switch
    {
        BreakerType.B => 5,
        BreakerType.C => 10,
        _ => 20,
    };
}
