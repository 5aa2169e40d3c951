using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What a load of steady power gets, at the least.</summary>
/// <param name="Nominal">At which its draws were given.</param>
/// <param name="AtEnd">What is left of it where it hangs, with all at most.</param>
internal sealed record SteadyVoltage(Figure<ElectricPotential> Nominal, ElectricPotential AtEnd)
{
    /// <summary>A current at that voltage.</summary>
    public Figure<ElectricCurrent> Draw(string name, Figure<ElectricCurrent> current) =>
        Sum.Of($"{name}, at the voltage it gets", "I = i · U / Uₑ", CircuitTheory.Phasors)
            .Put("i", current)
            .Put("U", Nominal)
            .Put("Uₑ", new Figure<ElectricPotential>(AtEnd, Doubts.None, Reason.Derived.It))
            .Gives((given, nominal, end) => given * (nominal.Volts / end.Volts));
}
