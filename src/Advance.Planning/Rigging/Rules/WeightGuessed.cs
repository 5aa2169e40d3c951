using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/weight-guessed</c></summary>
internal sealed class WeightGuessed : Rule<WeightGuessed.Case>
{
    public override string Name => "rigging/weight-guessed";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A good part of what a truss carries, or a hang weighs, is a guess.";

    public override string Why => "Every figure on the hoist table is as good as that guess.";

    public override string Cures => "Weigh it, ask its maker, or read it at the first lift.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. from truss in plan.Rigging.Trusses where truss.Weight.Value is { Kilograms: > 0 } select new Case(truss.Name, truss.Weight, truss.Loads, truss.Address, truss.Placed.Truss.At),
        .. from hang in plan.Rigging.Hangs where hang.Weight.Value is { Kilograms: > 0 } select new Case(hang.Stack.Stack.Name, hang.Weight, hang.Loads, hang.Written, hang.Placed.Hang.At),
    ];

    protected override Said Say(Case found) => new($"{found.Name}: {UnitsNet.Mass.FromKilograms(Guessed(found.Loads))} of {found.Weight.Value!.Value} are guessed.", "Weigh it, or read it at the first lift.", $"{UnitsNet.Mass.FromKilograms(Guessed(found.Loads))} of {found.Weight.Value!.Value}");

    // Common practice, no source.
    private const double Much = 0.1;

    private static double Guessed(IReadOnlyList<CarriedLoad> loads) => loads.Where(load => load.How == Known.Estimated).Sum(load => load.Weight.Value?.Kilograms ?? 0);

    internal sealed record Case(string Name, Figure<UnitsNet.Mass> Weight, IReadOnlyList<CarriedLoad> Loads, Address Of, Mark Written)
        : Judgement(Of / "guessed", Written, Guessed(Loads) <= Much * Weight.Value!.Value.Kilograms ? Verdict.Holds : Verdict.Fails, Weight.RestsOn);
}
