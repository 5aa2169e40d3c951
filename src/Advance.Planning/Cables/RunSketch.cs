using Advance.Domain.Companies;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A run before leads are picked: its way, and how long it must be.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Label">As written on the leads.</param>
/// <param name="Links">Everything it makes.</param>
/// <param name="Link">The one that takes the longest.</param>
/// <param name="Route">Its way; null where an end is nowhere.</param>
/// <param name="Use">What it is for.</param>
/// <param name="Needed">How long it must be; unknown where an end is nowhere.</param>
internal sealed record RunSketch(
    Address Address, string Label, IReadOnlyList<Link> Links, Link Link, Route? Route, RunUse Use, Figure<Length> Needed)
{
    /// <summary>Sketches a run. Where the same leads serve several acts, they must reach for each whose places are known.</summary>
    public static RunSketch Of(RunLinks run, Address address, NeededLength lengths, IReadOnlySet<string> distributions, CablePolicies policies)
    {
        var each = run.Links.Select(link => One(link, lengths, distributions, policies)).ToList();
        var known = each.Where(one => one.Needed.Value is not null).ToList();
        var longest = known.Count > 0 ? known.MaxBy(one => one.Needed.Value!.Value) : each[0];
        return new RunSketch(address, run.Label, run.Links, longest.Link, longest.Route, longest.Use, known.Count > 1 ? Longest(known.Select(one => one.Needed)) : longest.Needed);
    }

    private static (Link Link, Route? Route, RunUse Use, Figure<Length> Needed) One(
        Link link, NeededLength lengths, IReadOnlySet<string> distributions, CablePolicies policies)
    {
        var route = lengths.RouteOf(link);
        var use = RunUse.Of(link, route, distributions, policies);
        return (link, route, use, lengths.Of(link, route, use));
    }

    private static Figure<Length> Longest(IEnumerable<Figure<Length>> needed) =>
        Sum.Of("longest of all acts", "L = max Lᵢ", Publication.Arithmetic).PutAll("Lᵢ", needed).Gives(lengths => lengths.Values.Max());
}
