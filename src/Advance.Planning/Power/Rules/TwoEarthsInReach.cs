using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;

namespace Advance.Planning;

/// <summary><c>power/two-earths-in-reach</c></summary>
internal sealed class TwoEarthsInReach : Rule<TwoEarthsInReach.Case>
{
    public override string Name => "power/two-earths-in-reach";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Metal on one supply stands within 2.5 m of metal on another, or an analogue line joins units on both, and nobody says that the earths are joined.";

    public override string Why => "Whoever touches both stands between two earths, which may differ by a dangerous voltage; a line carries the one to the other, hums at best and takes a fault current at worst.";

    public override string Cures => "Have the electrician join the earths and write earths-joined, or feed both from one supply, or keep the things 2.5 m apart with a transformer or a network in the line; never join the neutrals.";

    public override Publication Source { get; } = new("BS 7671: parts in reach of each other have one earth; arm's reach is 2.5 m", "2018 + A2:2022", "411.3.1.2, 415.2, part 2", Standing.FromMemory);

    private const double Reach = 2.5;

    // Once for two supplies: the pair that stands nearest, or what a line joins. What hangs behind one limit hangs on one earth.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var metal = Metal(plan).GroupBy(one => one.Service.Name, StringComparer.Ordinal).Select(group => group.ToList()).ToList();
        var lines = SignalJoins.Of(plan);
        return from first in Enumerable.Range(0, metal.Count)
               from second in Enumerable.Range(first + 1, metal.Count - first - 1)
               let pair = (One: metal[first][0].Service, Other: metal[second][0].Service)
               where !IsOneEarth(pair.One, pair.Other)
               select CaseOf(metal[first], metal[second], [.. lines[SignalJoins.Pair(pair.One.Name, pair.Other.Name)]], plan.Brief.Gig.Power.EarthsJoined);
    }

    protected override Said Say(Case found) => new(
        $"{found.Second.Name} on service {found.Second.Service.Name} {(found.Line is null ? "is in reach of" : "is joined by an analogue line to")} {found.First.Name} on service {found.First.Service.Name}{(found.Verdict == Verdict.CannotBeJudged ? ", and nobody knows whether the earths are joined" : "")}.",
        "Have the electrician join the earths and write earths-joined, or keep them 2.5 m apart.",
        $"{found.First.Name} and {found.Second.Name}");

    private static bool IsOneEarth(Service one, Service other) =>
        one.Upstream is { IsKnown: true } first && other.Upstream is { IsKnown: true } second && string.Equals(first.Value, second.Value, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<Thing> Metal(Plan plan)
    {
        var boxes = from box in plan.Power.Distributions
                    where box.Origin is not null
                    from link in plan.Power.Links
                    where link.Address == Address.Of("link") / "power" / box.Name
                    select new Thing(box.Origin!, box.Name, link.To.Spot, link.To.Height, box.At, link.RestsOn);
        var loads = from circuit in plan.Power.Circuits
                    where circuit.Outlet.Origin is not null
                    from load in circuit.Chain.Loads
                    select new Thing(circuit.Outlet.Origin!, load.Name, load.Spot, load.Height ?? 0, load.At, load.RestsOn);
        return boxes.Concat(loads);
    }

    // What stands nobody knows where is in reach of nothing that can be told; a line joins it all the same.
    private static Case CaseOf(List<Thing> first, List<Thing> second, IReadOnlyList<Link> lines, Given<string>? joined)
    {
        var (one, other, apart) = first.SelectMany(here => second.Select(there => (here, there, Apart: here.To(there)))).MinBy(pair => pair.Apart);
        var line = apart > Reach && lines.Count > 0 ? lines[0] : null;
        var (from, to) = line is null ? (one, other) : (End(first, line), End(second, line));
        var verdict = apart > Reach && line is null ? Verdict.Holds : joined switch
        {
            null => Verdict.Fails,
            { IsKnown: true } => Verdict.Holds,
            _ => Verdict.CannotBeJudged,
        };
        return new Case(from, to, line, verdict, from.RestsOn.With(to.RestsOn).With(line?.RestsOn ?? Doubts.None).With(Doubts.Of(joined?.Doubt)));
    }

    private static Thing End(List<Thing> things, Link line) => things.Find(thing => thing.Name == line.From.Port.Device || thing.Name == line.To.Port.Device)!;

    internal sealed record Thing(Service Service, string Name, Spot? Spot, double Height, Mark At, Doubts RestsOn)
    {
        public double To(Thing other) => Spot is { } here && other.Spot is { } there ? Math.Sqrt(Math.Pow(here.To(there), 2) + Math.Pow(Height - other.Height, 2)) : double.PositiveInfinity;
    }

    internal sealed record Case(Thing First, Thing Second, Link? Line, Verdict Verdict, Doubts RestsOn)
        : Judgement(Address.Of("power") / "earths" / First.Service.Name / Second.Service.Name, Line?.At ?? Second.At, Verdict, RestsOn);
}
