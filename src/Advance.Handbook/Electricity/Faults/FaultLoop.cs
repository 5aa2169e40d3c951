using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// Impedance of the way that a fault current takes. What is given of a supply is a magnitude without an angle, so what lies behind it is added so
/// that the result errs to one side: <see cref="AtMost"/> for whether a device opens, <see cref="AtLeast"/> for what it must break.
/// </summary>
public static class FaultLoop
{
    /// <summary>Cmin: how low a public supply may be against its nominal voltage. Source: <see cref="Bs7671.LoopImpedance"/>.</summary>
    public const double LeastVoltage = 0.95;

    /// <summary>
    /// Of cables, out by the line and back by the earth: <c>Z = √((R₁ + R₂)² + (X₁ + X₂)²)</c>. Up to 35 mm² the reactance hardly counts.
    /// Source: <see cref="CircuitTheory.Ohm"/>.
    /// </summary>
    /// <param name="line">R₁, hot (at its class) for the least current, at 20 °C for the largest.</param>
    /// <param name="earth">R₂, likewise; the neutral's for a fault to neutral.</param>
    /// <param name="lineReactance">X₁.</param>
    /// <param name="earthReactance">X₂.</param>
    public static ElectricResistance OfCables(
        ElectricResistance line, ElectricResistance earth, ElectricResistance lineReactance, ElectricResistance earthReactance) =>
        ElectricResistance.FromOhms(double.Hypot(line.Ohms + earth.Ohms, lineReactance.Ohms + earthReactance.Ohms));

    /// <summary>The most it may be: <c>Zs = Ze + Z</c>, as it is usually worked out. Source: <see cref="Bs7671.LoopImpedance"/>.</summary>
    /// <param name="supply">Ze, up to where the cables begin.</param>
    /// <param name="cables">Z of the cables, hot.</param>
    public static ElectricResistance AtMost(ElectricResistance supply, ElectricResistance cables) => supply + cables;

    /// <summary>
    /// The least it may be: <c>Zs = √(Ze² + Z²)</c>, as if the supply were all reactance and the cables all resistance.
    /// Source: <see cref="CircuitTheory.Ohm"/>.
    /// </summary>
    /// <param name="supply">Ze, up to where the cables begin.</param>
    /// <param name="cables">Z of the cables, at 20 °C.</param>
    public static ElectricResistance AtLeast(ElectricResistance supply, ElectricResistance cables) =>
        ElectricResistance.FromOhms(double.Hypot(supply.Ohms, cables.Ohms));

    /// <summary>The most with which a device still opens in time: <c>Z = 0.95 · U₀ / Ia</c>. Source: <see cref="Bs7671.LoopImpedance"/>.</summary>
    /// <param name="toEarth">U₀, nominal voltage of a line to earth, V.</param>
    /// <param name="operating">Ia, which surely opens the device in the time allowed, A, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The operating current is not more than 0.</exception>
    public static ElectricResistance Permitted(ElectricPotential toEarth, ElectricCurrent operating)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(operating.Amperes);
        return ElectricResistance.FromOhms(LeastVoltage * toEarth.Volts / operating.Amperes);
    }
}
