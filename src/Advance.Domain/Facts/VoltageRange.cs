using UnitsNet;

namespace Advance.Domain.Facts;

/// <summary>One voltage, or all between two: <c>230 V</c>, <c>100-240 V</c>.</summary>
/// <param name="Least">The lowest marked, more than 0.</param>
/// <param name="Most">The highest marked, not below the lowest.</param>
public readonly record struct VoltageRange(ElectricPotential Least, ElectricPotential Most)
{
    /// <summary>In volts, without the unit.</summary>
    public override string ToString() =>
        Least.Volts == Most.Volts ? Wording.Numbers.Plain(Least.Volts, 1) : $"{Wording.Numbers.Plain(Least.Volts, 1)}-{Wording.Numbers.Plain(Most.Volts, 1)}";
}
