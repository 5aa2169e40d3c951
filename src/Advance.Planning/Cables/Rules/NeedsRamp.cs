using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary><c>cable/needs-ramp</c></summary>
internal sealed class NeedsRamp : Rule<NeedsRamp.Case>
{
    public override string Name => "cable/needs-ramp";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A way that leads take crosses a door, a lane, a dance floor or what the venue keeps clear, and nobody says that a ramp, a mat or a bridge keeps feet and wheels off.";

    public override string Why => "People trip over it, doors cut it, wheels break it.";

    public override string Cures => "Say in laid what keeps people and wheels off, and bring it; or lead the way round.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan) =>
        plan.Cables.Runs.Where(run => run.Route is not null)
            .SelectMany(run => run.Route!.Ways.Select(way => (way, run)))
            .GroupBy(used => used.way.Name, used => used, StringComparer.Ordinal)
            .Select(used => CaseOf(used.First().way, [.. used.Select(one => one.run)], plan));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new(
            $"{found.Way.Name}: nobody says how it is laid, and {RunNames.Count(found.Runs.Count)} ({RunNames.Of(found.Runs)}) lie in the hall.",
            "Write laid: what it runs along, and where a ramp or a mat goes over it.",
            $"{found.Way.Name}, not said")
        : new(
            $"{found.Way.Name} crosses {found.Crossed} with {RunNames.Count(found.Runs.Count)} ({RunNames.Of(found.Runs)}), and no ramp, mat or bridge is said.",
            "Say in laid what keeps people and wheels off, and bring it.",
            $"{found.Way.Name} across {found.Crossed}");

    private static Case CaseOf(CableWay way, IReadOnlyList<Run> runs, Plan plan)
    {
        var crossed = OnTheGround(way, runs, plan) ?? (WayLaid.Crossed(way) is { } word ? $"the {word}" : null);
        var verdict = WayLaid.IsKept(way) ? Verdict.Holds
            : crossed is not null ? Verdict.Fails
            : way.Laid.Length == 0 ? Verdict.CannotBeJudged
            : Verdict.Holds;
        return new Case(way, runs, crossed ?? "", verdict, way.Along.Aggregate(Doubts.None, (sum, place) => sum.With(Doubts.Of(place.Doubt))));
    }

    // What is kept clear, or marked out on the floor around the stage.
    private static string? OnTheGround(CableWay way, IReadOnlyList<Run> runs, Plan plan)
    {
        var legs = runs.SelectMany(run => run.Route!.Legs).Where(leg => ReferenceEquals(leg.Way, way) && !leg.IsOnDeck).ToList();
        return plan.Cables.Keep.FirstOrDefault(keep => legs.Any(leg => keep.IsCrossedBy(leg.From, leg.To)))?.Clear.What
            ?? plan.Stage.Things.FirstOrDefault(thing => IsFloor(thing, plan) && legs.Any(leg => Area.Around(thing.Spot, thing.Covers.Width, thing.Covers.Depth).IsCrossedBy(leg.From, leg.To)))?.Name;
    }

    private static bool IsFloor(Placed thing, Plan plan) => thing.Look == Look.Area && plan.Brief.Gig.Around.Any(around => around.Name == thing.Name);

    internal sealed record Case(CableWay Way, IReadOnlyList<Run> Runs, string Crossed, Verdict Verdict, Doubts RestsOn)
        : Judgement(Address.Of("cable") / Way.Name, Way.At, Verdict, RestsOn);
}
