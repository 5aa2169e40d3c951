using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>power/generator-underloaded</c></summary>
internal sealed class GeneratorUnderloaded : Rule<GeneratorUnderloaded.Case>
{
    public override string Name => "power/generator-underloaded";

    public override Severity Severity => Severity.Note;

    public override string Catches => "Our own loads leave a generator at little load for hours.";

    public override string Why => "A cold diesel soots up, smokes, and loses power when it is wanted.";

    public override string Cures => "Hire a smaller set, or one that shares its load with a battery.";

    public override Publication Source => Publication.CommonPractice;

    // Without hours the fullest state alone tells: if that is little, all are.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from set in plan.Power.Generators
        where set.Engine.Value is not null && set.Power.States.All(state => state.Sure.Value is not null)
        select new Case(set, plan.Brief.Company.Policies.GeneratorLeast);

    protected override Said Say(Case found) => new(
        $"{found.Set.Service.Name}: under {found.Least} % of the {found.Set.Engine.Value!.Value} of its engine{HoursOf(found)}, {found.Fullest.Sure.Value!.Value} of ours at most ({StateShares.Word(found.Fullest.State)}).",
        "Hire a smaller set, or one that shares its load with a battery.",
        $"{found.Fullest.Sure.Value!.Value} of {found.Set.Engine.Value!.Value}");

    private static Words HoursOf(Case found) => found.Set.Underloaded is { Value: { } time } ? $" for {Tenths(time.Hours)} h of its {Tenths(found.Set.Spells.Sum(spell => spell.Time.Value!.Value.Hours))} h" : (Words)" all the time";

    private static double Tenths(double hours) => Math.Round(hours, 1, MidpointRounding.AwayFromZero);

    private static StatePower FullestOf(GeneratorPlan set) => set.Power.States.MaxBy(state => state.Sure.Value!.Value.Watts)!;

    private static Verdict Judge(GeneratorPlan set, double least) => set.Underloaded is { Value: { } time }
        ? time.Hours > 0 ? Verdict.Fails : Verdict.Holds
        : 100 * (double)FullestOf(set).Sure.Value!.Value.Watts < least * (double)set.Engine.Value!.Value.Watts ? Verdict.Fails : Verdict.Holds;

    private static Doubts DoubtsOf(GeneratorPlan set) => set.Power.States.Aggregate(set.Engine.RestsOn, (sum, state) => sum.With(state.Sure.RestsOn)).With(set.Underloaded?.RestsOn ?? Doubts.None);

    internal sealed record Case(GeneratorPlan Set, double Least)
        : Judgement(Set.Service.Address / "generator" / "underloaded", Set.Service.At, Judge(Set, Least), DoubtsOf(Set))
    {
        public StatePower Fullest => FullestOf(Set);
    }
}
