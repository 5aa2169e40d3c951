using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/voltage-collapses</c></summary>
internal sealed class VoltageCollapses : Rule<VoltageCollapses.Case>
{
    public override string Name => "power/voltage-collapses";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Loads of steady power at the end of a circuit pull its voltage down, draw more for that, and it settles nowhere.";

    public override string Why => "They drop out and start again, over and over, as soon as the show gets loud.";

    public override string Cures => "A larger size or a shorter way for the lead with the most volts a metre, or fewer units on the circuit.";

    public override Publication Source => CircuitTheory.Phasors;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from circuit in plan.Power.Circuits
        where circuit.Chain.Loads.Any(load => load.IsSteady)
        select new Case(circuit, plan.Voltage.Collapsing.Any(one => one.Address == circuit.Address) ? Verdict.Fails : Verdict.Holds);

    protected override Said Say(Case found) => new(
        $"{found.Circuit.Name}: with all at most, the voltage at {found.Circuit.Chain.Name} settles nowhere.",
        "A larger size or a shorter way for its lead, or fewer units on the circuit.",
        $"{found.Circuit.Chain.Name}");

    internal sealed record Case(Circuit Circuit, Verdict Verdict) : Judgement(Circuit.Address / "settles", Circuit.Chain.At, Verdict, Circuit.Use.AtMost.RestsOn);
}
