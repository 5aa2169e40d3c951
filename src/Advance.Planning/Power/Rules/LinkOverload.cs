using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/link-overload</c></summary>
internal sealed class LinkOverload : Rule<LinkOverload.Case>
{
    public override string Name => "power/link-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "The link outlet of a unit carries more than it may: all that hangs behind it in the chain.";

    public override string Why => "The outlet of one box is not made for what the whole row draws; it gets hot long before a breaker sees anything.";

    public override string Cures => "Break the chain and feed the rest from a circuit of its own.";

    public override Publication Source { get; } = new("IEC 60320: rated current of an interconnection outlet", "", "", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from circuit in plan.Power.Circuits
        from index in Enumerable.Range(0, circuit.Chain.Loads.Count - 1)
        let behind = circuit.Chain.Loads.Skip(index + 1).ToList()
        select new Case(circuit.Chain.Loads[index], LegSum.Of($"behind {circuit.Chain.Loads[index].Name}", [.. behind.Select(load => LegDraw.Of(load, load.InUse))]));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Load.Name}: nobody knows what its link outlet may carry, or what hangs behind it.", "Write link-carries and the draws in the stock.", $"unknown")
        : new(
            $"{found.Load.Name}: {found.Behind.Value!.Value} behind its link outlet, {found.Load.LinkCarries.Value!.Value} allowed.",
            "Feed the rest of the chain from a circuit of its own.",
            $"{found.Behind.Value!.Value} of {found.Load.LinkCarries.Value!.Value}");

    internal sealed record Case(PowerLoad Load, Figure<ElectricCurrent> Behind)
        : Judgement(Load.Address / "link", Load.At, Behind.AtMost(Load.LinkCarries), Behind.RestsOn.With(Load.LinkCarries.RestsOn));
}
