using UnitsNet;

namespace Advance.Handbook;

/// <summary>Residual current devices of IEC.</summary>
public static class ResidualDevices
{
    /// <summary>Which share of its rated residual current may leak in normal use. Source: <see cref="Bs7671.Leakage"/>.</summary>
    public const double LeakageShare = 0.3;

    /// <summary>How many times the rating of the one behind it a device must have to be selective. Source: <see cref="Bs7671.ResidualSelectivity"/>.</summary>
    public const double SelectiveRatio = 3;

    /// <summary>Whether a device sees what a load may leak in a fault.</summary>
    /// <param name="device">Its type.</param>
    /// <param name="needed">The least type for the load.</param>
    public static bool Sees(ResidualType device, ResidualType needed) => device >= needed;

    /// <summary>
    /// Whether only the nearer of two devices in a row opens: the farther is delayed (type S) and of three times the rating at least. False as
    /// soon as one of both is not so; null where only the delay is in question. Source: <see cref="Bs7671.ResidualSelectivity"/>.
    /// </summary>
    /// <param name="farther">Rated residual current of the one towards the supply, A.</param>
    /// <param name="isDelayed">Whether that is delayed; null where nobody knows.</param>
    /// <param name="nearer">Rated residual current of the one towards the load, A.</param>
    public static bool? IsSelective(ElectricCurrent farther, bool? isDelayed, ElectricCurrent nearer) =>
        farther.Amperes < SelectiveRatio * nearer.Amperes * (1 - 1e-9) ? false : isDelayed;

    /// <summary>
    /// The longest that one may take to open, at 1, 2 or 5 times its rated residual current. Source: <see cref="Iec61008.BreakTime"/>; twice the rating
    /// from memory.
    /// </summary>
    /// <param name="times">How many times: 1, 2 or 5; above 5 as with 5.</param>
    /// <param name="isDelayed">Type S.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than once its rated residual current: it need not open.</exception>
    public static Duration Opens(int times, bool isDelayed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(times, 1);
        return Duration.FromMilliseconds(times switch
        {
            1 => isDelayed ? 500 : 300,
            < 5 => isDelayed ? 200 : 150,
            _ => isDelayed ? 150 : 40,
        });
    }
}
