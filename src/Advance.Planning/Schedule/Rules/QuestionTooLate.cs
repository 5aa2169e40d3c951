using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>schedule/question-too-late</c></summary>
internal sealed class QuestionTooLate : Rule<QuestionTooLate.Case>
{
    public override string Name => "schedule/question-too-late";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "An answer is wanted by a date after the gig.";

    public override string Why => "It is a slip of the pen, and whoever must answer takes the date at its word.";

    public override string Cures => "Write a date before the gig.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.ShowDate is { } show
            ? plan.Brief.OpenQuestions.Where(doubt => doubt.By is not null).Select(doubt => new Case(doubt, doubt.By!.Value.Resolve(show), LastDay(plan, show)))
            : [];

    protected override Said Say(Case found) => new(
        $"{found.Doubt.Subject}: wanted by {found.By}, the gig is over on {found.Last}.",
        Cures,
        $"{found.By}");

    private static DateOnly LastDay(Plan plan, DateOnly show) =>
        plan.Brief.Gig.Days.Where(day => day.Date.IsKnown).Select(day => day.Date.Value.Resolve(show)).Append(show).Max();

    internal sealed record Case(Doubt Doubt, DateOnly By, DateOnly Last)
        : Judgement(Address.Of("schedule") / "open question" / Doubt.Subject, Doubt.At, By <= Last ? Verdict.Holds : Verdict.Fails, Doubts.None);
}
