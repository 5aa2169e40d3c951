namespace Advance.Planning;

/// <summary>What comes out at the end of each lead as picked.</summary>
/// <param name="Circuits">Each circuit with what is lost on the way to its last unit.</param>
/// <param name="Figures">Voltage drops and voltages at the end.</param>
public sealed record VoltagePlan(IReadOnlyList<CircuitVoltage> Circuits, IReadOnlyList<Stated> Figures);
