using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary><c>power/neutral-missing</c></summary>
internal sealed class NeutralMissing : Rule<NeutralMissing.Case>
{
    public override string Name => "power/neutral-missing";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "A distribution on several legs is fed by a cable or an outlet without a neutral, and has loads between a leg and the neutral.";

    public override string Why => "The loads then lie in series between the lines: the small ones get nearly the voltage between lines and burn.";

    public override string Cures => "Feed it by a cable and an outlet with all lines, neutral and earth.";

    public override Publication Source { get; } = new("IEC 60309-2: 3P+E and 3P+N+E", "", "", Standing.Read);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from point in plan.Power.Distributions
        where point.Legs.Count > 1 && point.Loom.Count == 0 && point.Draws.Any(draw => draw.Wiring.UsesNeutral)
        select new Case(point, CulpritOf(plan, point));

    protected override Said Say(Case found) => new(
        $"{found.Point.Name}: {found.Culprit} has no neutral, and {found.Point.Draws.First(draw => draw.Wiring.UsesNeutral).Load.Name} needs one.",
        "Feed it by a cable and an outlet with all lines, neutral and earth.",
        $"{found.Culprit}");

    private static string? CulpritOf(Plan plan, SupplyPoint point)
    {
        var outlet = point.Upwards.Skip(1).FirstOrDefault(above => above.Row is { } row && OutletPhase.Read(row.Phase) is { Lines.Count: > 1, HasNeutral: false });
        return outlet?.Name ?? plan.Cables.Of(Address.Of("link") / "power" / point.Name)?.Leads.FirstOrDefault(lead => Lacks(lead.Cable!, point.Legs.Count))?.Id;
    }

    // Lines, neutral and earth; a single core is one of a set.
    private static bool Lacks(Cable cable, int legs) => cable.Cores > 1 && cable.Cores < legs + 2;

    internal sealed record Case(SupplyPoint Point, string? Culprit)
        : Judgement(Point.Address / "neutral-core", Point.At, Culprit is null ? Verdict.Holds : Verdict.Fails, Doubts.None);
}
