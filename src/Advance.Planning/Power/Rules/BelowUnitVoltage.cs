using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/below-unit-voltage</c></summary>
internal sealed class BelowUnitVoltage : Rule<BelowUnitVoltage.Case>
{
    public override string Name => "power/below-unit-voltage";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "With everything at most, the last unit of a circuit gets less voltage than it takes.";

    public override string Why => "It switches off in the loudest bar, or not at all until it is warm.";

    public override string Cures => "A larger section, a shorter way, or fewer units on the circuit.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from circuit in plan.Voltage.Circuits
        where circuit.AtEnd.Value is not null
        from load in circuit.Circuit.Chain.Loads
        where load.Takes is { IsKnown: true }
        select new Case(circuit, load, EndOf(circuit, load), new Figure<ElectricPotential>(load.Takes!.Value.Value.Voltages.Select(range => range.Least).MinBy(volts => volts.Volts) * 0.95, Doubts.Of(load.Takes.Value.Doubt), new Reason.Fixed(load.Takes.Value.At)));

    protected override Said Say(Case found) => new(
        $"{found.Load.Name}: {found.AtEnd.Value!.Value} at the end of {found.Of.Circuit.Name}, and it takes {found.Least.Value!.Value} or more.",
        "A larger section, a shorter way, or fewer units on the circuit.",
        $"{found.AtEnd.Value!.Value} against {found.Least.Value!.Value}");

    // A three-phase unit is marked with the voltage between lines where it is marked with one.
    private static Figure<ElectricPotential> EndOf(CircuitVoltage circuit, PowerLoad load) =>
        load.Takes!.Value.Value is { Phases: Phases.Three, BetweenLines: null } && circuit.Circuit.Outlet.Supply is { Phases: Phases.Three, BetweenLines: not null }
            ? Sum.Of($"{circuit.Circuit.Name}, voltage between lines at the end", "U = Uₑ · √3", Publication.Arithmetic).Put("Uₑ", circuit.AtEnd).Gives(end => end * Math.Sqrt(3))
            : circuit.AtEnd;

    internal sealed record Case(CircuitVoltage Of, PowerLoad Load, Figure<ElectricPotential> AtEnd, Figure<ElectricPotential> Least)
        : Judgement(Load.Address / "voltage", Load.At, AtEnd.AtLeast(Least), AtEnd.RestsOn.With(Least.RestsOn));
}
