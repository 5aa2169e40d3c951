using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary><c>power/generator-too-small</c></summary>
internal sealed class GeneratorTooSmall : Rule<GeneratorTooSmall.Case>
{
    public override string Name => "power/generator-too-small";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A line of a generator carries more than its rated current, or its engine is asked for more than it gives.";

    public override string Why => "It sags, slows down, and stops in the middle of the show.";

    public override string Cures => "Hire a larger set, spread the loads over its lines, or take loads off it.";

    public override Publication Source => Iso8528.Rating;

    // What is not known of the set is asked once, by another rule. A line over its rating is told before the engine.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Power.Generators.SelectMany(set => new[]
    {
        new Case(set, "line", set.Power.Service.Worst.InUse.AtMost(set.Line), set.LineShare.RestsOn),
        new Case(set, "engine", set.Power.Service.Worst.InUse.AtMost(set.Line) == Verdict.Fails ? Verdict.Holds : set.Power.Worst.Real.AtMost(set.Engine), set.EngineShare.RestsOn),
    }).Where(found => found.Verdict != Verdict.CannotBeJudged);

    protected override Said Say(Case found) => found.What == "line"
        ? new(
            $"{found.Set.Service.Name}: {LegOf(found)}{found.Set.Service.Worst.InUse.Value!.Value} ({found.Set.Service.Worst.StateInWords}) of the {found.Set.Line.Value!.Value} that a set of {found.Set.Rating.Value!.Value} gives on a line{found.Set.Service.SharedWords}.",
            "Hire a larger set, spread the loads over its lines, or take loads off it.",
            $"{found.Set.Service.Worst.InUse.Value!.Value} of {found.Set.Line.Value!.Value}")
        : new(
            $"{found.Set.Service.Name}: {found.Set.Power.Worst.Real.Value!.Value} ({StateShares.Word(found.Set.Power.Worst.State)}) of {found.Set.Engine.Value!.Value} of its engine{(found.Set.IsEngineAssumed ? ", which is assumed" : "")}{found.Set.Service.SharedWords}.",
            "Hire a larger set, or take loads off it.",
            $"{found.Set.Power.Worst.Real.Value!.Value} of {found.Set.Engine.Value!.Value}");

    private static Words LegOf(Case found) => found.Set.Service.Worst.Leg.Length > 0 ? $"{found.Set.Service.Worst.Leg} " : (Words)"";

    internal sealed record Case(GeneratorPlan Set, string What, Verdict Verdict, Doubts RestsOn)
        : Judgement(Set.Service.Address / "generator" / What, Set.Service.At, Verdict, RestsOn);
}
