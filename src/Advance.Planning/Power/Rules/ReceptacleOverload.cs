using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/receptacle-overload</c></summary>
internal sealed class ReceptacleOverload : Rule<ReceptacleOverload.Case>
{
    private const double Share = 0.8;

    public override string Name => "power/receptacle-overload";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "In North America: one thing that is plugged in draws more than four fifths of what its receptacle is rated for.";

    public override string Why => "The contacts of a receptacle get hot long before its breaker opens.";

    public override string Cures => "Feed it from a receptacle of the next size.";

    public override Publication Source { get; } = new("NEC: cord-and-plug-connected load on one receptacle", "2020", "210.21(B)(2)", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from circuit in plan.Power.Circuits
        where circuit.Outlet.Rules == WiringRules.Nec && circuit.Outlet.Limit.Value is not null
        let worst = circuit.Chain.Loads.MaxBy(load => load.InUse.Value?.Amperes ?? 0)!
        where worst.InUse.Value is not null
        select new Case(circuit, worst, Most(circuit.Outlet));

    protected override Said Say(Case found) => new(
        $"{found.Load.Name}: {found.Load.InUse.Value!.Value} on {found.Circuit.Name}, {found.Most.Value!.Value} allowed for one thing plugged in.",
        "Feed it from a receptacle of the next size.",
        $"{found.Load.InUse.Value!.Value} of {found.Most.Value!.Value}");

    private static Figure<ElectricCurrent> Most(SupplyPoint outlet) =>
        Sum.Of($"{outlet.Name}, for one thing plugged in", "I = 0.8 · n", Publication.Arithmetic).Put("n", outlet.Limit).Gives(rated => rated * Share);

    internal sealed record Case(Circuit Circuit, PowerLoad Load, Figure<ElectricCurrent> Most)
        : Judgement(Circuit.Address / "receptacle", Circuit.Chain.At, Load.InUse.AtMost(Most), Load.InUse.RestsOn.With(Most.RestsOn));
}
