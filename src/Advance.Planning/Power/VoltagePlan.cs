namespace Advance.Planning;

/// <summary>What comes out at the end of each lead as picked.</summary>
/// <param name="Circuits">Each circuit with what is lost on the way to its last unit.</param>
/// <param name="Figures">Voltage drops, rises, and voltages at the end.</param>
public sealed record VoltagePlan(IReadOnlyList<CircuitVoltage> Circuits, IReadOnlyList<Stated> Figures)
{
    /// <summary>Distributions fed on more than one leg, with what arrives on each.</summary>
    public IReadOnlyList<PointVoltage> Points { get; init; } = [];

    /// <summary>Circuits whose loads of steady power pull the voltage down so far that it settles nowhere.</summary>
    public IReadOnlyList<Circuit> Collapsing { get; init; } = [];
}
