using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/generator-uneven</c></summary>
internal sealed class GeneratorUneven : Rule<GeneratorUneven.Case>
{
    public override string Name => "power/generator-uneven";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The lines of a generator are shared more unevenly than its rotor bears: negative over positive sequence of its currents.";

    public override string Why => "A field that turns backward heats the rotor, and the voltages of the lines drift apart.";

    public override string Cures => "Move loads from the full line to the others, or fix fewer circuits by hand.";

    public override Publication Source => CircuitTheory.Sequences;

    // At little load no set minds.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Generators.Where(set => set.Uneven is not null).Select(set => new Case(set));

    protected override Said Say(Case found) => found.Set.MostUneven.Value is { } most
        ? new(
            $"{found.Set.Service.Name}: unbalance {found.Set.Uneven!.Unbalance!.Value!.Value} ({StateShares.Word(found.Set.Uneven.State)}, negative over positive sequence), {most} is borne.",
            "Move loads from the full line to the others.",
            $"{found.Set.Uneven!.Unbalance!.Value!.Value} of {most}")
        : new(
            $"{found.Set.Service.Name}: unbalance {found.Set.Uneven!.Unbalance!.Value!.Value} ({StateShares.Word(found.Set.Uneven.State)}, negative over positive sequence), and nobody knows what it bears.",
            "Ask its hirer how uneven its lines may be.",
            $"unknown");

    internal sealed record Case(GeneratorPlan Set)
        : Judgement(Set.Service.Address / "generator" / "uneven", Set.Service.At, Set.Uneven!.Unbalance!.AtMost(Set.MostUneven), Set.Uneven.Unbalance!.RestsOn.With(Set.MostUneven.RestsOn));
}
