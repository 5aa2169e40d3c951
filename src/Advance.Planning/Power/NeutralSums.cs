using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Finds the worst neutral current of a place: over every show state and every set of legs that may be on. Loads alike are added before their
/// phasors are, so that thousands cost no more than dozens.
/// </summary>
internal sealed class NeutralSums(NodeDraws gather, Policies policies)
{
    private const double Slack = 1e-9;

    private readonly Dictionary<PowerLoad, NeutralFacts> facts = new(ReferenceEqualityComparer.Instance);
    private readonly NeutralFacts nobody = NeutralFacts.Of(null, policies);

    /// <summary>What returns through the neutral of a place, in a state.</summary>
    public IReadOnlyList<NeutralTerm> Terms(PowerNode node, ShowState state, bool atMost) =>
    [
        .. from draw in gather.At(node, state, atMost)
           where draw.Wiring.UsesNeutral
           from line in draw.Wiring.Kind == MainsWiringKind.SomeLine ? [(int?)null] : draw.Wiring.ToNeutral.Select(line => (int?)line)
           select new NeutralTerm(draw, line, FactsOf(draw)),
    ];

    /// <summary>The worst of a place with more than one leg.</summary>
    public NeutralCase Of(PowerNode node, bool atMost)
    {
        var states = StateShares.States.Select(state => (State: state, Terms: Terms(node, state, atMost))).ToList();
        var doubts = states.SelectMany(one => one.Terms).Aggregate(Doubts.None, (sum, term) => sum.With(term.Draw.Current.RestsOn).With(term.Facts.RestsOn));
        if (states.SelectMany(one => one.Terms).Any(term => term.Draw.Current.Value is null))
        {
            return new NeutralCase(new Figure<ElectricCurrent>(null, doubts, Reason.Derived.It), states[0].State, node.Legs, [], []);
        }

        var worst = Worst(node, [.. states.Select(one => (one.State, Loads: Merged(node.Angles, one.Terms)))]);
        var terms = states.First(one => one.State == worst.State).Terms.Where(term => term.Line is not { } line || worst.On.Contains(line)).ToList();
        var names = worst.On.Select(line => node.Legs[node.Lines.Index().First(one => one.Item == line).Index]).ToList();
        var working = new NeutralWorking(node.Angles, worst.Direction);
        var orders = working.Orders(terms);
        var current = NeutralWorking.Total($"{node.Name}, neutral {(atMost ? "at most" : "in use")}, {StateShares.Word(worst.State)}, with {string.Join(" and ", names)} on", orders);
        var assumed = terms.Where(term => term.Facts.IsAssumed).Select(term => term.Draw.Name).Distinct(StringComparer.Ordinal).ToList();
        return new NeutralCase(current with { RestsOn = doubts }, worst.State, names, orders, assumed);
    }

    private NeutralFacts FactsOf(WiredDraw draw)
    {
        if (draw.Load is not { } load)
        {
            return nobody;
        }

        if (!facts.TryGetValue(load, out var found))
        {
            facts[load] = found = NeutralFacts.Of(load, policies);
        }

        return found;
    }

    private static NeutralWorst Worst(PowerNode node, List<(ShowState State, NeutralLoads Loads)> states)
    {
        var worst = new NeutralWorst(states[0].State, node.Lines, 0, 0);
        foreach (var on in Sets(node.Lines))
        {
            foreach (var (state, loads) in states)
            {
                var (amperes, direction) = loads.With(on);
                worst = amperes > worst.Amperes * (1 + Slack) ? new NeutralWorst(state, on, amperes, direction) : worst;
            }
        }

        return worst;
    }

    // Fewest off first, so that of equals the plainest is named.
    private static IEnumerable<IReadOnlyList<int>> Sets(IReadOnlyList<int> lines) => Enumerable.Range(1, (1 << lines.Count) - 1)
        .Select(bits => (IReadOnlyList<int>)[.. lines.Where((_, index) => (bits & (1 << index)) != 0)])
        .OrderByDescending(on => on.Count);

    private static NeutralLoads Merged(LegAngles angles, IReadOnlyList<NeutralTerm> terms)
    {
        var groups = terms.GroupBy(term => term.Alike).Select(group => (First: group.First(), Amperes: group.Sum(term => term.Amperes))).ToList();
        var sum = groups.Where(one => one.First.Line is not null).Aggregate(PhasorSum.On(angles), (all, one) => all.LineToNeutral(
            one.First.Line!.Value, ElectricCurrent.FromAmperes(one.Amperes), one.First.Facts.Lag?.Value, one.First.Facts.Spectrum, one.First.Facts.Within.Value));
        return new NeutralLoads(sum, [.. groups.Where(one => one.First.Line is null).Select(one => (one.Amperes, one.First.Facts.Spectrum))]);
    }

    private sealed record NeutralWorst(ShowState State, IReadOnlyList<int> On, double Amperes, double Direction);
}
