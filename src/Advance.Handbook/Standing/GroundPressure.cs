using UnitsNet;

namespace Advance.Handbook;

/// <summary>What the ground gets under a load off centre. Source: <see cref="En1997.EffectiveWidth"/>.</summary>
public static class GroundPressure
{
    /// <summary>How far off centre the load is: <c>e = M / (g · m)</c>.</summary>
    /// <param name="moment">N·m.</param>
    /// <param name="mass">kg, over 0.</param>
    public static Length Eccentricity(Torque moment, Mass mass) => Length.FromMeters(moment.NewtonMeters / (TipAndSlide.Gravity * mass.Kilograms));

    /// <summary>What the base presses with: <c>p = g · m / ((B - 2 · e) · L)</c>.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="width">B, of the base, the way that it leans, m.</param>
    /// <param name="off">e, see <see cref="Eccentricity"/>, m.</param>
    /// <param name="length">L, the other way, m, over 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nothing of the base is left.</exception>
    public static Pressure Under(Mass mass, Length width, Length off, Length length)
    {
        var left = width.Meters - (2 * off.Meters);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(left);
        return Pressure.FromPascals(TipAndSlide.Gravity * mass.Kilograms / (left * length.Meters));
    }
}
