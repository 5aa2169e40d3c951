using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/generator-not-known</c></summary>
internal sealed class GeneratorNotKnown : Rule<GeneratorNotKnown.Case>
{
    public override string Name => "power/generator-not-known";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The show hangs on a generator of which nobody has told what it takes to judge it.";

    public override string Why => "What its lines, its engine and its voltage bear is then anybody's guess.";

    public override string Cures => "Ask its hirer for the data sheet: rating, steps of load, leading load, fuel by load.";

    public override Publication Source => Publication.CommonPractice;

    // One question for a set, whatever is missing.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Generators.Select(set => new Case(set));

    protected override Said Say(Case found) => new(
        $"{found.Set.Service.Name}: nobody has told its {string.Join(", ", found.Set.Missing)}; what hangs on that is not judged.",
        "Ask its hirer for the data sheet.",
        $"{string.Join(", ", found.Set.Missing)}");

    private static Doubts DoubtsOf(GeneratorPlan set) => new[] { set.Rating.RestsOn, set.MostStep?.RestsOn, set.MostLeading?.RestsOn }
        .Aggregate(Doubts.None, (sum, doubts) => sum.With(doubts ?? Doubts.None));

    internal sealed record Case(GeneratorPlan Set)
        : Judgement(Set.Service.Address / "generator" / "known", Set.Service.At, Set.Missing.Count > 0 ? Verdict.CannotBeJudged : Verdict.Holds, DoubtsOf(Set));
}
