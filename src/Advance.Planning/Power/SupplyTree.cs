using Advance.Domain;
using Advance.Domain.Figures;
using Advance.Domain.Venues;

namespace Advance.Planning;

/// <summary>Services, the distributions on them, and their outlets.</summary>
/// <param name="Services">In the order the venue names them.</param>
/// <param name="Distributions">In the order the gig names them.</param>
/// <param name="Faults">What is wrong with the feeds.</param>
/// <param name="Chosen">Feeds that were left open and chosen here.</param>
internal sealed record SupplyTree(
    IReadOnlyList<PowerNode> Services, IReadOnlyList<PowerNode> Distributions, IReadOnlyList<FeedFault> Faults, Choices Chosen)
{
    /// <summary>What services hang on together, in the order of the venue.</summary>
    public IReadOnlyList<PowerNode> Upstreams { get; private init; } = [];

    /// <summary>Every outlet, in the order of the distributions.</summary>
    public IEnumerable<PowerNode> Outlets => Distributions.SelectMany(node => node.Children).Where(node => node.Kind == PowerNodeKind.Outlet);

    /// <summary>What is before services first, services, then what hangs on them.</summary>
    public IEnumerable<PowerNode> Nodes => Upstreams.Concat(Services).Concat(Distributions.SelectMany(node => node.Children.Where(child => child.Kind != PowerNodeKind.Distribution).Prepend(node)));

    /// <summary>Puts it together.</summary>
    /// <param name="brief">As written.</param>
    /// <param name="ground">Where distributions and services are.</param>
    /// <param name="mating">What fits what.</param>
    /// <param name="earlier">What was chosen for the last issue.</param>
    public static SupplyTree Of(Brief brief, Ground ground, Mating mating, Choices earlier)
    {
        var power = brief.Gig.Power;
        var places = power.Services.DistinctBy(place => place.Name).ToDictionary(place => place.Name, StringComparer.OrdinalIgnoreCase);
        var services = brief.Venue.Services.Select(service => PowerNode.Of(service, ground.Find(places.GetValueOrDefault(service.Name)?.Place))).ToList();
        var distributions = power.Distributions.Select(device => PowerNode.Of(device, brief.Stock.Find(device.Item.Or("")), ground.Find(device.Place))).ToList();
        var feeds = new Feeds(services, distributions, power.Circuits, mating, earlier);
        feeds.Connect();
        return new SupplyTree(services, distributions, feeds.Faults, feeds.Chosen)
        {
            Upstreams = [.. brief.Venue.UpstreamLimits.Select(limit => PowerNode.Of(limit, services.Where(service => IsOn(service, limit))))],
        };
    }

    private static bool IsOn(PowerNode service, UpstreamLimit limit) =>
        service.Service!.Upstream is { IsKnown: true } name && string.Equals(name.Value, limit.Name, StringComparison.OrdinalIgnoreCase);

    /// <summary>The distribution of a name, capitals aside; null where there is none.</summary>
    public PowerNode? Distribution(string name) =>
        Distributions.FirstOrDefault(node => string.Equals(node.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));
}
