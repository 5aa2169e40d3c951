using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Handbook;

/// <summary>Voltage drop in cables. Never add or compare volts to neutral with volts between lines: percentages are on one base.</summary>
public static class VoltageDrop
{
    /// <summary>Reactance of one conductor of a cable whose reactance nobody knows, 0.08 mΩ/m. Source: <see cref="Iec60364.AnnexG"/>.</summary>
    public static readonly ResistancePerLength UnknownReactance = ResistancePerLength.FromOhmsPerKilometre(0.08);

    /// <summary>
    /// What counts of resistance and reactance at a power factor: <c>z = r · cos φ + x · sin φ</c>. Source: <see cref="Nec.Table9"/>,
    /// <see cref="Iec60364.AnnexG"/>. For direct current, and for small cables near unity, it is the resistance.
    /// </summary>
    /// <param name="resistance">Of one conductor at working temperature.</param>
    /// <param name="reactance">Of one conductor; 0.08 mΩ/m where nobody knows (Annex G).</param>
    /// <param name="lag">Displacement angle of the current; negative where it leads, and then the drop is less.</param>
    public static ResistancePerLength Effective(ResistancePerLength resistance, ResistancePerLength reactance, Angle lag) =>
        new((resistance.OhmsPerMetre * Math.Cos(lag.Radians)) + (reactance.OhmsPerMetre * Math.Sin(lag.Radians)));

    /// <summary>
    /// There and back, for direct current and for one phase: <c>ΔU = 2 · I · L · r</c>. Also for one loaded leg of a three-phase cable.
    /// Source: <see cref="Iec60364.AnnexG"/> with b = 2.
    /// </summary>
    /// <param name="current">A.</param>
    /// <param name="length">One way, m.</param>
    /// <param name="perLength">Of one conductor; at a power factor see <see cref="Effective"/>.</param>
    public static ElectricPotential TwoWire(ElectricCurrent current, Length length, ResistancePerLength perLength) =>
        ElectricPotential.FromVolts(2 * current.Amperes * length.Meters * perLength.OhmsPerMetre);

    /// <summary>
    /// Between lines, where all three legs carry the same: <c>ΔU = √3 · I · L · r</c>; its percentage is on the voltage between lines.
    /// Source: <see cref="Nec.Table9"/>. One leg alone drops twice the percentage: <see cref="TwoWire"/>.
    /// </summary>
    /// <param name="current">In each line, A.</param>
    /// <param name="length">One way, m.</param>
    /// <param name="perLength">Of one conductor; at a power factor see <see cref="Effective"/>.</param>
    public static ElectricPotential ThreePhase(ElectricCurrent current, Length length, ResistancePerLength perLength) =>
        ElectricPotential.FromVolts(Math.Sqrt(3) * current.Amperes * length.Meters * perLength.OhmsPerMetre);

    /// <summary>
    /// From a line to neutral, where all three legs carry the same: <c>ΔU = I · L · r</c>; its percentage is on the voltage to neutral.
    /// Source: <see cref="Iec60364.AnnexG"/> with b = 1.
    /// </summary>
    /// <param name="current">In each line, A.</param>
    /// <param name="length">One way, m.</param>
    /// <param name="perLength">Of one conductor; at a power factor see <see cref="Effective"/>.</param>
    public static ElectricPotential ToNeutral(ElectricCurrent current, Length length, ResistancePerLength perLength) =>
        ElectricPotential.FromVolts(current.Amperes * length.Meters * perLength.OhmsPerMetre);

    /// <summary>
    /// From a tabulated drop per ampere and metre, which holds both ways already: <c>ΔU = z · I · L</c>. Source: <see cref="Bs7671.Table4F1B"/>,
    /// <see cref="Bs7671.Table4F3B"/>; three-phase columns give volts between lines.
    /// </summary>
    /// <param name="tabulated">Drop per ampere and metre.</param>
    /// <param name="current">A.</param>
    /// <param name="length">One way, m.</param>
    public static ElectricPotential Tabulated(ResistancePerLength tabulated, ElectricCurrent current, Length length) =>
        ElectricPotential.FromVolts(tabulated.OhmsPerMetre * current.Amperes * length.Meters);

    /// <summary>Per cent of the nominal voltage on the same base: <c>u = 100 · ΔU / U</c>.</summary>
    /// <param name="drop">V.</param>
    /// <param name="nominal">V, more than 0: to neutral for a drop to neutral, between lines for a drop between lines.</param>
    /// <exception cref="ArgumentOutOfRangeException">The nominal voltage is not more than 0.</exception>
    public static Ratio Share(ElectricPotential drop, ElectricPotential nominal)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(nominal.Volts);
        return Ratio.FromPercent(100 * drop.Volts / nominal.Volts);
    }
}
