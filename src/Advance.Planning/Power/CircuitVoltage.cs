using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What is lost on the way from the service to the last unit of a circuit, on the leads as picked.</summary>
/// <param name="Circuit">Which.</param>
/// <param name="Drop">In use, as a share of the voltage that the circuit is for, with what the service says is used up before it.</param>
/// <param name="AtEnd">What is left at the last unit, with all at most.</param>
public sealed record CircuitVoltage(Circuit Circuit, Figure<Ratio> Drop, Figure<ElectricPotential> AtEnd)
{
    /// <summary>Between which conductors: <c>L1</c>, <c>L1-L2</c>; of a circuit on several legs the worst. Empty on a supply of one leg.</summary>
    public string Leg { get; init; } = "";

    /// <summary>The case in which most is lost in use: <c>everything on</c>, <c>L1 alone</c>.</summary>
    public string Case { get; init; } = "";

    /// <summary>The same drop by the linear form <c>Σ (R · x - X · y) / U</c>, to check by hand: a little more than the exact one.</summary>
    public required Figure<Ratio> ByHand { get; init; }

    /// <summary>Its numbers, each under its address.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        Stated.Of(Circuit.Address / "drop", $"{Circuit.Name}, voltage drop to the last unit{CaseWords}", Drop),
        Stated.Of(Circuit.Address / "drop-by-hand", $"{Circuit.Name}, voltage drop by the linear form{CaseWords}", ByHand),
        Stated.Of(Circuit.Address / "at-end", $"{Circuit.Name}, voltage at the last unit, all at most", AtEnd),
    ];

    private string CaseWords => Case.Length > 0 ? $", worst with {Case}" : "";
}
