using System.Numerics;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A current that comes through a cable.</summary>
/// <param name="Name">What draws it.</param>
/// <param name="InUse">In use.</param>
/// <param name="AtMost">At most.</param>
/// <param name="Facts">Its angle.</param>
/// <param name="Wiring">Between which conductors it lies.</param>
internal sealed record DropDraw(string Name, Figure<ElectricCurrent> InUse, Figure<ElectricCurrent> AtMost, NeutralFacts Facts, MainsWiring Wiring)
{
    /// <summary>In use, or at most.</summary>
    public Figure<ElectricCurrent> Current(bool atMost) => atMost ? AtMost : InUse;

    /// <summary>
    /// By how much the current lags, radian: its own angle; where nobody knows that, the one within its limits that is worst for a voltage, or
    /// that makes it rise most.
    /// </summary>
    /// <param name="turn">Angle of its factor and of the cable's impedance together, radian.</param>
    /// <param name="rises">Whether a rise is looked for.</param>
    public double Lag(double turn, bool rises)
    {
        var within = Facts.Within.Value!.Value.Radians;
        return Facts.Lag?.Value?.Radians ?? Math.Clamp(Math.IEEERemainder(turn + (rises ? Math.PI : 0), 2 * Math.PI), -within, within);
    }

    /// <summary>The drop that it makes in a voltage, over a cable, volt.</summary>
    public Complex Drop(Complex factor, Complex impedance, bool atMost, bool rises)
    {
        var part = factor * impedance;
        return (Current(atMost).Value?.Amperes ?? 0) * part * Complex.FromPolarCoordinates(1, -Lag(part.Phase, rises));
    }
}
