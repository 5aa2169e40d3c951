using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>crew/too-late</c></summary>
internal sealed class TooLate : Rule<TooLate.Case>
{
    public override string Name => "crew/too-late";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "By policy, the load-in is not done with those who are called when the first check, the doors or a set needs it, or the load-out when the building must be empty.";

    public override string Why => "What is not done by then is done in a hurry, with the public in the room, or not at all.";

    public override string Cures => "Call more people or earlier, leave something out, or move the check.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Crew.Workers.Count == 0 || plan.Crew.Tasks.Count == 0 ? [] : [.. LoadIn(plan), .. LoadOut(plan)];

    protected override Said Say(Case found) => found.End is { } end
        ? new(
            $"{found.What} by policy takes {found.People} called until {end}; {found.For} at {found.Needed}.",
            $"Call more people or earlier, leave something out, or move it by {end.Minutes - found.Needed.Minutes} min.",
            $"{found.People} called, {end} for {found.Needed}")
        : new(
            $"{found.What} cannot be timed: {found.Missing}; {found.For} at {found.Needed}.",
            "Write what is missing.",
            "not timed");

    private static IEnumerable<Case> LoadIn(Plan plan)
    {
        if (new DayRows(plan.Brief.Gig).Deadline is not { } deadline)
        {
            yield break;
        }

        var end = plan.Crew.LoadInEnd;
        yield return new Case(
            Address.Of("crew") / "load-in",
            "The load-in",
            deadline.What,
            deadline.Time,
            end,
            plan.Crew.Workers.Count,
            plan.Crew.Tasks.Where(task => task.Length.Value is null).Select(task => task.What).FirstOrDefault("something nobody knows the size of"),
            deadline.At,
            plan.Crew.RestsOn.With(deadline.RestsOn));
    }

    private static IEnumerable<Case> LoadOut(Plan plan)
    {
        if (plan.Crew.LoadOut is { } loadOut && plan.Brief.Venue.Rules.Empty is { IsKnown: true } empty)
        {
            yield return new Case(
                Address.Of("crew") / "load-out",
                "The load-out",
                "the building must be empty",
                empty.Value,
                loadOut.End,
                plan.Crew.Workers.Count,
                "some of its work is unknown",
                loadOut.At,
                plan.Crew.RestsOn.With(loadOut.RestsOn).With(Doubts.Of(empty.Doubt)));
        }
    }

    internal sealed record Case(
        Address Where, string What, string For, Moment Needed, Moment? End, int People, string Missing, Mark At, Doubts RestsOn)
        : Judgement(Where, At, End is { } end ? (end.Minutes <= Needed.Minutes ? Verdict.Holds : Verdict.Fails) : Verdict.CannotBeJudged, RestsOn);
}
