using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/residual-not-selective</c></summary>
internal sealed class ResidualNotSelective : Rule<ResidualNotSelective.Case>
{
    public override string Name => "power/residual-not-selective";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Two residual-current devices in a row are too alike for only the nearer one to trip.";

    public override string Why => "One wet plug darkens everything behind the service.";

    public override string Cures => "Ask for a delayed device of at least three times the rating at the service, or know where it is reset.";

    public override Publication Source { get; } = new("BS 7671: selectivity of residual-current devices", "2018", "536.4.1.4", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from circuits in plan.Power.Circuits.GroupBy(circuit => circuit.Outlet.Device!)
        let circuit = circuits.First()
        where IsDevice(circuit.Row.Residual) && circuit.Outlet.Origin is { } origin && IsDevice(origin.ResidualProtection)
        select new Case(circuit, Figure.From(circuit.Row.Residual), Figure.From(circuit.Outlet.Origin!.ResidualProtection));

    protected override Said Say(Case found) => new(
        $"{found.Circuit.Outlet.Device!.Name}: {found.Own.Value!.Value} behind {found.Before.Value!.Value} of service {found.Circuit.Outlet.Origin!.Name}, where three times as much and a delay part them.",
        "Ask for a delayed device at the service, or know where it is reset.",
        $"{found.Own.Value!.Value} behind {found.Before.Value!.Value}");

    // Nought is written for none.
    private static bool IsDevice(Given<ElectricCurrent> residual) => residual.Is(out var rated) && rated.Amperes > 0;

    private static Verdict Judge(Figure<ElectricCurrent> own, Figure<ElectricCurrent> before) =>
        before.Value!.Value.Amperes >= 3 * own.Value!.Value.Amperes ? Verdict.Holds : Verdict.Fails;

    internal sealed record Case(Circuit Circuit, Figure<ElectricCurrent> Own, Figure<ElectricCurrent> Before)
        : Judgement(Address.Of("power") / Circuit.Outlet.Device!.Name / "selective", Circuit.Outlet.At, Judge(Own, Before), Own.RestsOn.With(Before.RestsOn));
}
