using UnitsNet;

namespace Advance.Handbook;

/// <summary>Earth conductors: how thick, and what current they may carry with nothing wrong.</summary>
public static class ProtectiveConductors
{
    /// <summary>
    /// The most from what is plugged in by an ordinary plug; above it a connector of IEC 60309 or fixed wiring.
    /// Source: <see cref="Bs7671.ProtectiveConductorCurrent"/>.
    /// </summary>
    public static readonly ElectricCurrent MostByPlug = ElectricCurrent.FromMilliamperes(3.5);

    /// <summary>
    /// The most of a circuit, and of one thing by a connector of IEC 60309, with an ordinary protective conductor; above it a thicker or a second one.
    /// Source: <see cref="Bs7671.ProtectiveConductorCurrent"/>.
    /// </summary>
    public static readonly ElectricCurrent MostByOneConductor = ElectricCurrent.FromMilliamperes(10);

    /// <summary>
    /// The least section in mm² where nobody worked one out, of the same metal as the lines: as they are to 16 mm², 16 mm² to 35 mm², then half.
    /// Source: <see cref="Bs7671.Table547"/>. An earth core of unknown size that follows it has at most the resistance of this one.
    /// </summary>
    /// <param name="line">Section of the line conductors, mm², more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The section is not more than 0.</exception>
    public static double LeastSection(double line)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(line);
        return line switch
        {
            <= 16 => line,
            <= 35 => 16,
            _ => line / 2,
        };
    }
}
