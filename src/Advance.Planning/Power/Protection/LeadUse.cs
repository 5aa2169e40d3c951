using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What comes through a mains run, and the device before it.</summary>
/// <param name="Run">The leads.</param>
/// <param name="Device">The nearest device upstream; null where nobody knows of one.</param>
/// <param name="InUse">The worst line, in the worst state.</param>
/// <param name="AtMost">The same, at most.</param>
/// <param name="Loaded">How many of its conductors carry current: 2, or 3 on several legs.</param>
/// <param name="Point">The place of the supply whose rules and neutral hold.</param>
/// <param name="At">Where it was asked for.</param>
internal sealed record LeadUse(Run Run, SupplyPoint? Device, Figure<ElectricCurrent> InUse, Figure<ElectricCurrent> AtMost, int Loaded, SupplyPoint Point, Mark At)
{
    /// <summary>How many circuits it holds: several for a loom.</summary>
    public int Circuits => Math.Max(1, Point.Loom.Count);
}
