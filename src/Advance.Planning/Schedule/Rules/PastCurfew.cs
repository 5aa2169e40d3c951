using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>schedule/past-curfew</c></summary>
internal sealed class PastCurfew : Rule<PastCurfew.Case>
{
    public override string Name => "schedule/past-curfew";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A set, or the line that ends the music, comes after the venue's music-off, or a line of the day comes after the building must be empty.";

    public override string Why => "A licence ends to the minute, and the venue loses it for what the gig did.";

    public override string Cures => "Move or shorten the set, or have the venue confirm another hour.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var gig = plan.Brief.Gig;
        var rules = plan.Brief.Venue.Rules;
        var day = new DayRows(gig);
        var music = Sounding.Sets(gig).Select(set => (set.What, End: set.Time.To, set.At, set.RestsOn))
            .Concat(day.MusicOff.Select(row => (row.What, End: row.Time.Value, row.At, RestsOn: Doubts.Of(row.Time.Doubt))));
        var rows = day.Timed.Select(row => (row.What, End: row.Time.Value, row.At, RestsOn: Doubts.Of(row.Time.Doubt)));
        return [.. Against(rules.MusicOff, "music off", music), .. Against(rules.Empty, "building empty", rows)];
    }

    protected override Said Say(Case found) => found.Limit is { } limit
        ? new($"{found.What} until {found.End}, {found.Rule} at {limit}.", Cures, $"{found.End}, allowed {limit}")
        : new($"{found.What} until {found.End}: nobody knows when it is {found.Rule}.", "Ask the venue.", Words.Of($"{found.Rule} unknown"));

    // An hour that is still a question is one question, whatever would come after it.
    private static IEnumerable<Case> Against(Given<Moment>? limit, string rule, IEnumerable<(string What, Moment End, Mark At, Doubts RestsOn)> things)
    {
        if (limit is not { } given)
        {
            return [];
        }

        var doubts = Doubts.Of(given.Doubt);
        return given.Is(out var latest)
            ? things.Select(thing => new Case(
                thing.What, rule, thing.End, latest, thing.End.Minutes <= latest.Minutes ? Verdict.Holds : Verdict.Fails, thing.At, thing.RestsOn.With(doubts)))
            : things.Take(1).Select(thing => new Case(thing.What, rule, thing.End, null, Verdict.CannotBeJudged, given.At, doubts));
    }

    internal sealed record Case(string What, string Rule, Moment End, Moment? Limit, Verdict Verdict, Mark At, Doubts RestsOn)
        : Judgement(Address.Of("schedule") / What / End.ToString(), At, Verdict, RestsOn);
}
