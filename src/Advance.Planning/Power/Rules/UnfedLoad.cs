using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary><c>power/unfed-load</c></summary>
internal sealed class UnfedLoad : Rule<UnfedLoad.Case>
{
    public override string Name => "power/unfed-load";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "Something that needs mains has no outlet: all that fit are taken.";

    public override string Why => "It stays dark, and is found at line check.";

    public override string Cures => "Bring another distribution or strip, or link units that hand the mains on.";

    public override Publication Source => Publication.Arithmetic;

    // Where nobody has said a word about power, that is one question and not as many as there are units. What fits nowhere is told by others.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Distributions.Count == 0
        ? []
        : plan.Power.Unfed.Where(unfed => unfed.Reason == UnfedReason.NoneLeft).Select(unfed => new Case(unfed.Chain, Verdict.Fails, plan.Power.ToFree))
            .Concat(plan.Power.Circuits.Select(circuit => new Case(circuit.Chain, Verdict.Holds, [])));

    protected override Said Say(Case found) => new(
        $"{found.Chain.Name}: no outlet{(found.Chain.First.Inlet.Length > 0 ? $" for {found.Chain.First.Inlet}" : "")} is left.",
        found.ToFree.Count > 0 ? FreeCircuits.Say(found.ToFree) : "Bring another distribution or strip, or link units that hand the mains on.",
        $"{found.Chain.Name}");

    internal sealed record Case(PowerChain Chain, Verdict Verdict, IReadOnlyList<CircuitRow> ToFree)
        : Judgement(Address.Of("power") / "feed" / Chain.Name, Chain.At, Verdict, Doubts.None);
}
