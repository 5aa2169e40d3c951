using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What is lost on the way from the service to the last unit of a circuit, on the leads as picked.</summary>
/// <param name="Circuit">Which.</param>
/// <param name="Drop">With all in use, as a share of the nominal voltage.</param>
/// <param name="AtEnd">What is left at the last unit, with all at most.</param>
public sealed record CircuitVoltage(Circuit Circuit, Figure<Ratio> Drop, Figure<ElectricPotential> AtEnd)
{
    /// <summary>Its numbers, each under its address.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        Stated.Of(Circuit.Address / "drop", $"{Circuit.Name}, voltage drop to the last unit", Drop),
        Stated.Of(Circuit.Address / "at-end", $"{Circuit.Name}, voltage at the last unit, all at most", AtEnd),
    ];
}
