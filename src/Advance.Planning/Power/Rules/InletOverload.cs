using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/inlet-overload</c></summary>
internal sealed class InletOverload : Rule<InletOverload.Case>
{
    public override string Name => "power/inlet-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "The inlet of the first unit of a chain carries more than its connector is rated for: its own draw and all that hangs behind it.";

    public override string Why => "A 10 A appliance inlet on a 16 A circuit is the usual burn.";

    public override string Cures => "Break the chain, or begin it with a unit whose inlet is larger.";

    public override Publication Source { get; } = new("IEC 60320 and IEC 60309: rated currents of connectors", "", "", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from circuit in plan.Power.Circuits
        let first = circuit.Chain.First
        let rating = Connectors.Rating(first.Inlet, new Reason.Fixed(first.Piece?.Kind?.At ?? first.At))
        where rating.Value is not null
        select new Case(circuit, LegSum.Of($"into {first.Name}", [.. circuit.Chain.Loads.Select(load => LegDraw.Of(load, load.InUse))]), rating);

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Circuit.Chain.First.Name}: nobody knows what it and all behind it draw.", "Write the draws in the stock.", $"unknown")
        : new(
            $"{found.Circuit.Chain.First.Name}: {found.Through.Value!.Value} through its inlet, {found.Rating.Value!.Value} allowed ({found.Circuit.Chain.First.Inlet}).",
            "Break the chain, or begin it with a unit whose inlet is larger.",
            $"{found.Through.Value!.Value} of {found.Rating.Value!.Value}");

    internal sealed record Case(Circuit Circuit, Figure<ElectricCurrent> Through, Figure<ElectricCurrent> Rating)
        : Judgement(Circuit.Chain.First.Address / "inlet", Circuit.Chain.At, Through.AtMost(Rating), Through.RestsOn);
}
