using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The way of a fault current to the far end of a circuit, or to the inlet of a box, and what opens it.</summary>
/// <param name="Point">The outlet, or the box.</param>
/// <param name="Name">Of the far end, on paper.</param>
/// <param name="Device">The device that has to open; null where nobody knows of one.</param>
/// <param name="Loop">From line to earth at the far end, hot.</param>
/// <param name="Permitted">With how much the device opens in time; unknown where its type is.</param>
/// <param name="Residual">The finest residual-current device before it; null where there is none.</param>
/// <param name="ByResidual">With how much that one opens before 50 V stand on what people touch.</param>
/// <param name="Largest">The largest current that a fault may draw where the device is; unknown where the venue's is.</param>
/// <param name="Section">Of the conductor that outlives least, up to a plug with a fuse, mm²; unknown where one is.</param>
/// <param name="Needed">The section that such a conductor must have to outlive what its device lets through.</param>
/// <param name="At">Where it was asked for.</param>
public sealed record FaultWay(
    SupplyPoint Point,
    string Name,
    SupplyPoint? Device,
    Figure<ElectricResistance> Loop,
    Figure<ElectricResistance> Permitted,
    Figure<ElectricCurrent>? Residual,
    Figure<ElectricResistance> ByResidual,
    Figure<ElectricCurrent> Largest,
    Figure<double> Section,
    NeededSection Needed,
    Mark At)
{
    /// <summary>Its name in the plan.</summary>
    public Address Address => Point.Address / "loop";

    /// <summary>With how much the fault is cleared, by whichever bears more; unknown where that of the device is and there is no residual one.</summary>
    public Figure<ElectricResistance> Allowed => Residual is null || (Permitted.Value is { } device && ByResidual.Value is { } residual && device.Ohms > residual.Ohms) ? Permitted : ByResidual;

    /// <summary>Whether the fault is cleared in time.</summary>
    public Verdict Cleared => Loop.AtMost(Allowed);

    // What nobody can work out is asked for once, and not printed for each circuit.
    internal IEnumerable<Stated> Figures => Loop.Value is null ? [] :
    [
        Stated.Of(Address / "impedance", $"{Name}, loop impedance at the far end", Loop),
        Stated.Of(Address / "allowed", $"{Name}, loop impedance allowed", Allowed),
        .. Largest.Value is null ? [] : new[] { Stated.Of(Address / "largest", $"{Name}, largest fault current at its device", Largest) },
        .. Needed.Section.Value is null || Section.Value is null ? [] : new[] { Stated.Of(Address / "outlives", $"{Name}, section in mm² that outlives a fault", Needed.Section) },
    ];
}
