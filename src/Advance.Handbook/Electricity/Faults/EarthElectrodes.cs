using UnitsNet;

namespace Advance.Handbook;

/// <summary>TT systems: earth electrode and residual current device together. Source: <see cref="Bs7671.EarthElectrode"/>.</summary>
public static class EarthElectrodes
{
    /// <summary>The most that exposed metal may come to, 50 V.</summary>
    public static readonly ElectricPotential Touch = ElectricPotential.FromVolts(50);

    /// <summary>What exposed metal comes to before the device opens: <c>U = Ra · IΔn</c>; <see cref="Touch"/> at most.</summary>
    /// <param name="electrode">Ra, of the electrode and the protective conductors to it.</param>
    /// <param name="residual">IΔn, rated residual current, A.</param>
    public static ElectricPotential TouchVoltage(ElectricResistance electrode, ElectricCurrent residual) =>
        ElectricPotential.FromVolts(electrode.Ohms * residual.Amperes);

    /// <summary>The most that the electrode may have: <c>Ra = 50 / IΔn</c>. More than 200 Ω may not be stable.</summary>
    /// <param name="residual">IΔn, rated residual current, A, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rated residual current is not more than 0.</exception>
    public static ElectricResistance Most(ElectricCurrent residual)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(residual.Amperes);
        return ElectricResistance.FromOhms(Touch.Volts / residual.Amperes);
    }
}
