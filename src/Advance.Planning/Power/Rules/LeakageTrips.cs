using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/leakage-trips</c></summary>
internal sealed class LeakageTrips : Rule<LeakageTrips.Case>
{
    public override string Name => "power/leakage-trips";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The units behind one residual-current device leak more than 30 % of what it trips at.";

    public override string Why => "It trips without a fault, when the next thing is switched on.";

    public override string Cures => "Spread the units over more circuits.";

    public override Publication Source { get; } = new("BS 7671: leakage up to 30 % of the rated residual current", "2018", "531.3.2", Standing.Read);

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Circuits
        .Where(circuit => circuit.Row.Residual.IsKnown)
        .Select(circuit => new Case(circuit, Most(circuit)));

    protected override Said Say(Case found) => new(
        $"{found.Circuit.Name}: {found.Circuit.Leakage.Value!.Value} of leakage behind {found.Circuit.Row.Residual.Value}; {found.Most.Value!.Value} is good practice.",
        "Spread the units over more circuits.",
        $"{found.Circuit.Leakage.Value!.Value} of {found.Most.Value!.Value}");

    private static Figure<ElectricCurrent> Most(Circuit circuit) =>
        Sum.Of("leakage allowed", "I = 0.3 · n", Publication.CommonPractice).Put("n", Figure.From(circuit.Row.Residual)).Gives(rated => rated * 0.3);

    internal sealed record Case(Circuit Circuit, Figure<ElectricCurrent> Most)
        : Judgement(Circuit.Address / "leakage", Circuit.Chain.At, Circuit.Leakage.AtMost(Most), Circuit.Leakage.RestsOn);
}
