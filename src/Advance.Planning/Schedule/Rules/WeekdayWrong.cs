using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>schedule/weekday-wrong</c></summary>
internal sealed class WeekdayWrong : Rule<WeekdayWrong.Case>
{
    public override string Name => "schedule/weekday-wrong";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A date is written with a weekday that it does not fall on.";

    public override string Why => "One of the two is wrong, and half of those who read it go by the other half.";

    public override string Cures => "Ask which was meant, and write both.";

    public override Publication Source { get; } = new("ISO 8601, Gregorian calendar", "2019", "", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var gig = plan.Brief.Gig;
        var where = Address.Of("schedule");
        foreach (var day in gig.Days.Where(day => day.Date.IsKnown))
        {
            yield return CaseOf(where / day.Name, day.Date.Value, day.Date.At, plan.ShowDate);
        }

        if (gig.Issued is { IsKnown: true } issued)
        {
            yield return CaseOf(where / "issued", issued.Value, issued.At, plan.ShowDate);
        }

        foreach (var doubt in plan.Brief.OpenQuestions)
        {
            if (doubt.By is { } by)
            {
                yield return CaseOf(where / "open question" / doubt.Subject, by, doubt.At, plan.ShowDate);
            }
        }
    }

    protected override Said Say(Case found) => new(
        $"{found.Written} is a {found.Falls}.",
        $"Ask which was meant: {found.Date}, or the {found.Weekday} beside it.",
        $"{found.Written}");

    private static Case CaseOf(Address where, WrittenDate written, Mark at, DateOnly? near)
    {
        var date = written.Resolve(near ?? new DateOnly(written.Year ?? 1, 1, 1));
        var canTell = written.Year is not null || near is not null;
        var verdict = written.Weekday is not { } weekday || weekday == date.DayOfWeek
            ? Verdict.Holds
            : canTell ? Verdict.Fails : Verdict.CannotBeJudged;
        return new Case(where, written, date, at, verdict);
    }

    internal sealed record Case(Address Where, WrittenDate Written, DateOnly Date, Mark At, Verdict Verdict)
        : Judgement(Where, At, Verdict, Doubts.None)
    {
        public string Falls => Speech.Weekday(Date.DayOfWeek);

        public string Weekday => Speech.Weekday(Written.Weekday ?? Date.DayOfWeek);
    }
}
