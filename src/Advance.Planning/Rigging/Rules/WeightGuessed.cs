using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/weight-guessed</c></summary>
internal sealed class WeightGuessed : Rule<WeightGuessed.Case>
{
    public override string Name => "rigging/weight-guessed";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A good part of what a truss carries is a guess.";

    public override string Why => "Every figure on the hoist table is as good as that guess.";

    public override string Cures => "Weigh it, ask its maker, or read it at the first lift.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.Weight.Value is { Kilograms: > 0 }).Select(truss => new Case(truss));

    protected override Said Say(Case found) => new($"{found.Truss.Name}: {UnitsNet.Mass.FromKilograms(Guessed(found.Truss))} of {found.Truss.Weight.Value!.Value} are guessed.", "Weigh it, or read it at the first lift.", $"{UnitsNet.Mass.FromKilograms(Guessed(found.Truss))} of {found.Truss.Weight.Value!.Value}");

    // Common practice, no source.
    private const double Much = 0.1;

    private static double Guessed(TrussPlan truss) => truss.Loads.Where(load => load.How == Known.Estimated).Sum(load => load.Weight.Value?.Kilograms ?? 0);

    internal sealed record Case(TrussPlan Truss)
        : Judgement(Truss.Address / "guessed", Truss.Placed.Truss.At, Guessed(Truss) <= Much * Truss.Weight.Value!.Value.Kilograms ? Verdict.Holds : Verdict.Fails, Truss.Weight.RestsOn);
}
