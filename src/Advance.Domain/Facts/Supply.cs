using UnitsNet;

namespace Advance.Domain.Facts;

/// <summary>A mains supply, as a service gives it or a thing takes it: <c>230/400 V three-phase 50 Hz</c>, <c>100-240 V 50/60 Hz</c>.</summary>
/// <param name="Voltages">Between a line and neutral; a thing may take several. At least one.</param>
/// <param name="BetweenLines">Between two lines; null where not said.</param>
/// <param name="Phases">Null where not said, which for a thing means single-phase.</param>
/// <param name="Frequencies">One or two; empty where not said.</param>
public sealed record Supply(
    IReadOnlyList<VoltageRange> Voltages, ElectricPotential? BetweenLines, Phases? Phases, IReadOnlyList<Frequency> Frequencies)
{
    /// <summary>As written, with single spaces.</summary>
    public override string ToString()
    {
        var volts = string.Join('/', Voltages.Select(range => range.ToString()).Concat(BetweenLines is { } lines ? [Wording.Numbers.Plain(lines.Volts, 1)] : []));
        var hertz = string.Join('/', Frequencies.Select(frequency => Wording.Numbers.Plain(frequency.Hertz, 1)));
        return $"{volts} V{Word(Phases)}{(hertz.Length > 0 ? $" {hertz} Hz" : "")}";
    }

    /// <inheritdoc/>
    public bool Equals(Supply? other) => other is not null && string.Equals(ToString(), other.ToString(), StringComparison.Ordinal);

    /// <inheritdoc/>
    public override int GetHashCode() => Voltages.Count;

    private static string Word(Phases? phases) => phases switch
    {
        Facts.Phases.Single => " single-phase",
        Facts.Phases.Split => " split-phase",
        Facts.Phases.Three => " three-phase",
        _ => "",
    };
}
