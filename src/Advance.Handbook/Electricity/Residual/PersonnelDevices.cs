using UnitsNet;

namespace Advance.Handbook;

/// <summary>Ground-fault circuit interrupters of class A, the personnel protection of North America. Source: <see cref="Ul943.ClassA"/>.</summary>
public static class PersonnelDevices
{
    /// <summary>Below it one does not open, 4 mA: so much may leak in normal use.</summary>
    public static readonly ElectricCurrent HoldsBelow = ElectricCurrent.FromMilliamperes(4);

    /// <summary>From it one opens, 6 mA.</summary>
    public static readonly ElectricCurrent OpensFrom = ElectricCurrent.FromMilliamperes(6);

    /// <summary>The longest that one may take to open: <c>t = (0.02 / I)^1.43</c>, s.</summary>
    /// <param name="residual">I, A, 6 mA or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Less than 6 mA: it need not open.</exception>
    public static Duration Opens(ElectricCurrent residual)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(residual.Amperes, OpensFrom.Amperes * (1 - 1e-9));
        return Duration.FromSeconds(Math.Pow(0.02 / residual.Amperes, 1.43));
    }
}
