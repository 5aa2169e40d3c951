using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>crew/no-break</c></summary>
internal sealed class NoBreak : Rule<NoBreak.Case>
{
    public override string Name => "crew/no-break";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Somebody who is called works longer without a meal than policy allows.";

    public override string Why => "Tired and hungry people get hurt and hurt others, and in many places the law asks for the break.";

    public override string Cures => "Plan a meal: write its time in crew meals, or a line in the schedule that begins with Crew meal.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var gig = plan.Brief.Gig;
        var day = new DayRows(gig);
        var called = gig.People.Where(person => person.Call is { IsKnown: true }).ToList();
        if (gig.Days.Count > 1 || called.Count == 0 || day.Timed.Count == 0)
        {
            return [];
        }

        var end = day.Timed[^1].Time.Value;
        var meals = MealsOf(gig, day);
        return called.GroupBy(person => person.Call!.Value.Value).Select(group => CaseOf([.. group], end, meals, gig, plan.Brief.Company.Policies.Breaks));
    }

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Names} are called at {found.From}: nobody says when the meal is.", Cures, "meal without a time")
        : new(
            $"{found.Names}: from {found.From} to {found.To} without a meal, {found.Time}; {found.Allowed} allowed.",
            Cures,
            $"{found.Time} without a meal");

    private static List<Moment> MealsOf(Gig gig, DayRows day)
    {
        var written = gig.Crew.Meals is { } meals && meals.Is(out var words) ? ClockTimes.In(words) : [];
        return [.. written.Concat(day.Meals.Select(row => row.Time.Value)).Distinct().Order()];
    }

    private static Case CaseOf(IReadOnlyList<Person> people, Moment end, List<Moment> meals, Gig gig, Domain.Companies.MealBreaks breaks)
    {
        var call = people[0].Call!.Value.Value;
        var between = meals.Where(meal => meal.Minutes >= call.Minutes && meal.Minutes < end.Minutes).ToList();
        var starts = between.Select(meal => meal.Plus((int)breaks.For.Minutes)).Prepend(call);
        var longest = starts.Zip(between.Append(end), (from, to) => (From: from, To: to)).MaxBy(stretch => stretch.To.Minutes - stretch.From.Minutes);
        var time = Duration.FromSeconds((longest.To.Minutes - longest.From.Minutes) * 60);
        var isWorded = gig.Crew.Meals is not null && meals.Count == 0;
        var verdict = time <= breaks.By ? Verdict.Holds : isWorded ? Verdict.CannotBeJudged : Verdict.Fails;
        var names = people.Count == 1 ? people[0].Name : $"{people[0].Name} and {people.Count - 1} more";
        var doubts = people.Aggregate(Doubts.Of(gig.Crew.Meals?.Doubt), (sum, person) => sum.With(Doubts.Of(person.Call?.Doubt)));
        return new Case(names, longest.From, longest.To, time, breaks.By, people[0].At, verdict, doubts);
    }

    internal sealed record Case(
        string Names, Moment From, Moment To, Duration Time, Duration Allowed, Mark At, Verdict Verdict, Doubts RestsOn)
        : Judgement(Address.Of("crew") / "break" / From.ToString(), At, Verdict, RestsOn);
}
