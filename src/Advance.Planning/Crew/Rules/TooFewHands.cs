using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>crew/too-few-hands</c></summary>
internal sealed class TooFewHands : Rule<TooFewHands.Case>
{
    public override string Name => "crew/too-few-hands";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Something that people lift takes more of them than are called.";

    public override string Why => "It is lifted all the same, and a back pays for it.";

    public override string Cures => "Call one more, ask the act or the venue for a hand at that moment, or bring what lifts it.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var gig = plan.Brief.Gig;
        if ((gig.People.Count == 0 && gig.Crew.Hands is null) || plan.Crew.HeaviestLift is not { Hands: { } hands } lift)
        {
            return [];
        }

        // Hands that nobody counted yet may be enough, but those with names may be as well.
        var verdict = gig.People.Count >= hands ? Verdict.Holds : Figure.Count(hands).AtMost(plan.Crew.Called);
        return [new Case(lift, hands, plan.Crew.Called, plan.Stock.Lines.First(line => line.Item == lift.Item), verdict)];
    }

    protected override Said Say(Case found) => found.Called.Value is { } called
        ? new(
            $"{found.Lift.Item} weighs {found.Lift.Weight.Value ?? Mass.Zero}: {found.Hands} lift it, {called} called.",
            $"Call {found.Hands - called} more, ask the act or the venue for a hand at that moment, or bring what lifts it.",
            $"{found.Hands} hands for {found.Lift.Weight.Value ?? Mass.Zero}, {called} called")
        : new(
            $"{found.Lift.Item} weighs {found.Lift.Weight.Value ?? Mass.Zero}: {found.Hands} lift it, nobody knows how many are called.",
            "Write how many hands come (crew: hands).",
            $"{found.Hands} hands for {found.Lift.Weight.Value ?? Mass.Zero}");

    internal sealed record Case(Lift Lift, int Hands, Figure<int> Called, StockLine Line, Verdict Verdict)
        : Judgement(Address.Of("crew") / "lift" / Lift.Item, Line.At, Verdict, Called.RestsOn.With(Lift.Weight.RestsOn));
}
