using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;
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

    public override Publication Source => Bs7671.Leakage;

    // A device that nobody knows is asked for by another rule.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Services.Concat(plan.Power.Feeders).Concat(plan.Power.Circuits.Select(circuit => circuit.Outlet))
        let residual = point.Service?.ResidualProtection ?? point.Row?.Residual
        where residual is { IsKnown: true } known && known.Value.Amperes > 0 && point.Loads.Count > 0
        select new Case(point, Figure.From(residual.Value));

    protected override Said Say(Case found) => new(
        $"{found.Point.Name}: {found.Point.Leakage.Value!.Value} of leakage behind {found.Residual.Value!.Value}; {Most(found.Residual).Value!.Value} is good practice.",
        "Spread the units over more circuits.",
        $"{found.Point.Leakage.Value!.Value} of {Most(found.Residual).Value!.Value}");

    private static Figure<ElectricCurrent> Most(Figure<ElectricCurrent> residual) =>
        Sum.Of("leakage allowed", "I = 0.3 · n", Bs7671.Leakage).Put("n", residual).Gives(rated => rated * ResidualDevices.LeakageShare);

    internal sealed record Case(SupplyPoint Point, Figure<ElectricCurrent> Residual)
        : Judgement(Point.Address / "leakage", Point.At, Point.Leakage.AtMost(Most(Residual)), Point.Leakage.RestsOn.With(Residual.RestsOn));
}
