using UnitsNet;

namespace Advance.Handbook;

/// <summary>Current from power and back, for sinusoidal voltages. Source: <see cref="DoeHandbook.AcPower"/>.</summary>
public static class Currents
{
    /// <summary>Between two conductors: <c>I = P / (V · pf)</c>. For direct current the power factor is 1.</summary>
    /// <param name="power">Real power, W.</param>
    /// <param name="voltage">Between the two conductors, V, more than 0.</param>
    /// <param name="powerFactor">True power factor, more than 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Voltage or power factor is outside its range.</exception>
    public static ElectricCurrent SinglePhase(Power power, ElectricPotential voltage, double powerFactor)
    {
        Check(voltage, powerFactor);
        return ElectricCurrent.FromAmperes((double)power.Watts / (voltage.Volts * powerFactor));
    }

    /// <summary>In each line of a balanced three-phase load: <c>I = P / (√3 · V · pf)</c>.</summary>
    /// <param name="power">Real power of all three phases, W.</param>
    /// <param name="lineToLine">Voltage between lines, V, more than 0.</param>
    /// <param name="powerFactor">True power factor, more than 0 and at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Voltage or power factor is outside its range.</exception>
    public static ElectricCurrent ThreePhase(Power power, ElectricPotential lineToLine, double powerFactor)
    {
        Check(lineToLine, powerFactor);
        return ElectricCurrent.FromAmperes((double)power.Watts / (Math.Sqrt(3) * lineToLine.Volts * powerFactor));
    }

    /// <summary>Apparent power between two conductors: <c>S = V · I</c>.</summary>
    public static ElectricApparentPower ApparentSinglePhase(ElectricPotential voltage, ElectricCurrent current) =>
        ElectricApparentPower.FromVoltamperes(voltage.Volts * current.Amperes);

    /// <summary>Apparent power of three phases that carry the same: <c>S = √3 · V · I</c>.</summary>
    /// <param name="lineToLine">Voltage between lines, V.</param>
    /// <param name="current">In each line, A.</param>
    public static ElectricApparentPower ApparentThreePhase(ElectricPotential lineToLine, ElectricCurrent current) =>
        ElectricApparentPower.FromVoltamperes(Math.Sqrt(3) * lineToLine.Volts * current.Amperes);

    /// <summary>Real power out of apparent power: <c>P = S · pf</c>.</summary>
    /// <param name="apparent">Apparent power, VA.</param>
    /// <param name="powerFactor">True power factor, 0 to 1.</param>
    public static Power Real(ElectricApparentPower apparent, double powerFactor) => Power.FromWatts(apparent.Voltamperes * powerFactor);

    private static void Check(ElectricPotential voltage, double powerFactor)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(voltage.Volts);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(powerFactor);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(powerFactor, 1);
    }
}
