using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/upstream-nowhere</c></summary>
internal sealed class UpstreamNowhere : Rule<UpstreamNowhere.Case>
{
    public override string Name => "power/upstream-nowhere";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A service names an upstream limit that the venue does not describe.";

    public override string Why => "What several services share is then added up nowhere, and the device before them opens in the show.";

    public override string Cures => "Describe it under upstream-limits of the venue, or mend the name.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Services
        where point.Service!.Upstream is not null
        select new Case(point, VerdictOf(plan, point.Service!.Upstream!.Value));

    protected override Said Say(Case found) => new(
        $"{found.Point.Name} hangs on {(found.Point.Service!.Upstream is { IsKnown: true } name ? $"{name.Value}, which nobody has described" : "an upstream limit that nobody has named yet")}.",
        "Describe it under upstream-limits of the venue, or mend the name.",
        $"{found.Point.Name}");

    private static Verdict VerdictOf(Plan plan, Given<string> name) => !name.Is(out var said) ? Verdict.CannotBeJudged
        : plan.Brief.Venue.UpstreamLimits.Any(limit => string.Equals(limit.Name, said, StringComparison.OrdinalIgnoreCase)) ? Verdict.Holds : Verdict.Fails;

    internal sealed record Case(SupplyPoint Point, Verdict Verdict)
        : Judgement(Point.Address / "upstream", Point.At, Verdict, Doubts.Of(Point.Service!.Upstream?.Doubt));
}
