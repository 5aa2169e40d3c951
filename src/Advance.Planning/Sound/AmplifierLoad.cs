using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The boxes on one channel of an amplifier.</summary>
/// <param name="Address">Its name in the plan: <c>sound/AMP1/out/1</c>.</param>
/// <param name="Port">The output.</param>
/// <param name="Boxes">What hangs on it.</param>
/// <param name="Impedance">Of all of them in parallel; unknown where one is.</param>
/// <param name="Least">The least that the channel drives; unknown where no stock says.</param>
/// <param name="At">Where it was written that they hang there.</param>
public sealed record AmplifierLoad(
    Address Address, Port Port, IReadOnlyList<StackedBox> Boxes, Figure<ElectricResistance> Impedance, Figure<ElectricResistance> Least, Mark At)
{
    /// <summary>Its number, under its address.</summary>
    public IReadOnlyList<Stated> Figures => [Stated.Of(Address / "impedance", $"{Port}, impedance of its boxes", Impedance)];
}
