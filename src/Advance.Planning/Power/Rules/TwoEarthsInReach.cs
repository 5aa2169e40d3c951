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

    public override string Catches => "Metal on one supply stands within 2.5 m of metal on another, and nobody says that their earths are joined.";

    public override string Why => "Whoever touches both stands between two earths, which may differ by a dangerous voltage.";

    public override string Cures => "Have the electrician join the earths and write earths-joined, or keep the things 2.5 m apart; never join the neutrals.";

    public override Publication Source { get; } = new("BS 7671: parts in reach of each other have one earth; arm's reach is 2.5 m", "2018 + A2:2022", "411.3.1.2, 415.2, part 2", Standing.FromMemory);

    private const double Reach = 2.5;

    // Once for two supplies: the pair that stands nearest. What hangs behind one limit hangs on one earth.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var metal = Metal(plan).GroupBy(one => one.Service.Name, StringComparer.Ordinal).Select(group => group.ToList()).ToList();
        return from first in Enumerable.Range(0, metal.Count)
               from second in Enumerable.Range(first + 1, metal.Count - first - 1)
               where !IsOneEarth(metal[first][0].Service, metal[second][0].Service)
               select CaseOf(metal[first], metal[second], plan.Brief.Gig.Power.EarthsJoined);
    }

    protected override Said Say(Case found) => new(
        $"{found.Second.Name} on service {found.Second.Service.Name} is in reach of {found.First.Name} on service {found.First.Service.Name}{(found.Verdict == Verdict.CannotBeJudged ? ", and nobody knows whether the earths are joined" : "")}.",
        "Have the electrician join the earths and write earths-joined, or keep them 2.5 m apart.",
        $"{found.First.Name} and {found.Second.Name}");

    private static bool IsOneEarth(Service one, Service other) =>
        one.Upstream is { IsKnown: true } first && other.Upstream is { IsKnown: true } second && string.Equals(first.Value, second.Value, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<Thing> Metal(Plan plan)
    {
        var boxes = from box in plan.Power.Distributions
                    where box.Origin is not null
                    from link in plan.Power.Links
                    where link.To.Spot is not null && link.Address == Address.Of("link") / "power" / box.Name
                    select new Thing(box.Origin!, box.Name, link.To.Spot!.Value, link.To.Height, box.At, link.RestsOn);
        var loads = from circuit in plan.Power.Circuits
                    where circuit.Outlet.Origin is not null
                    from load in circuit.Chain.Loads
                    where load.Spot is not null
                    select new Thing(circuit.Outlet.Origin!, load.Name, load.Spot!.Value, load.Height ?? 0, load.At, load.RestsOn);
        return boxes.Concat(loads);
    }

    private static Case CaseOf(List<Thing> first, List<Thing> second, Given<string>? joined)
    {
        var (one, other, apart) = first.SelectMany(here => second.Select(there => (here, there, Apart: here.To(there)))).MinBy(pair => pair.Apart);
        var verdict = apart > Reach ? Verdict.Holds : joined switch
        {
            null => Verdict.Fails,
            { IsKnown: true } => Verdict.Holds,
            _ => Verdict.CannotBeJudged,
        };
        return new Case(one, other, verdict, one.RestsOn.With(other.RestsOn).With(Doubts.Of(joined?.Doubt)));
    }

    internal sealed record Thing(Service Service, string Name, Spot Spot, double Height, Mark At, Doubts RestsOn)
    {
        public double To(Thing other) => Math.Sqrt(Math.Pow(Spot.To(other.Spot), 2) + Math.Pow(Height - other.Height, 2));
    }

    internal sealed record Case(Thing First, Thing Second, Verdict Verdict, Doubts RestsOn)
        : Judgement(Address.Of("power") / "earths" / First.Service.Name / Second.Service.Name, Second.At, Verdict, RestsOn);
}
