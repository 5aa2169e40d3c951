using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>stack/slow-to-lower</c></summary>
internal sealed class SlowToLower : Rule<SlowToLower.Case>
{
    public override string Name => "stack/slow-to-lower";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "What is to come down in wind takes longer than the company allows, or nobody says how long.";

    public override string Why => "Wind rises faster than people climb, and nobody lowers anything in the wind that it cannot stand.";

    public override string Cures => "Put more people to it, make it quicker to lower, or take it down at a smaller gust.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var most = Figure.Policy("standing / lower-within", plan.Brief.Company.Policies.Standing.LowerWithin);
        return (plan.Standing.Site.Wind?.Lowered ?? []).Select(row => new Case(row, most, Figure.From(row.Takes).AtMost(most)));
    }

    protected override Said Say(Case found) => found.Row.Takes.Is(out var takes)
        ? new($"{found.Row.What}: takes {Minutes(takes)} to come down; {Minutes(found.Most.Value!.Value)} is allowed.", Cures, $"{Minutes(takes)}")
        : new($"{found.Row.What}: nobody says how long it takes to come down.", "Try it once, and write how long it took.", "time unknown");

    private static Duration Minutes(Duration time) => Duration.FromMinutes(time.Minutes);

    internal sealed record Case(LoweredRow Row, Figure<Duration> Most, Verdict Verdict)
        : Judgement(StandingSite.Address / "lowered" / Row.What, Row.At, Verdict, Doubts.Of(Row.Takes.Doubt));
}
