using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>What mains leads must make: feeders, leads from outlets, and links from unit to unit.</summary>
internal sealed class PowerLinks(Routes routes)
{
    private const string Mains = "mains";

    // Of a lead that comes with a unit so much is lost at both its ends.
    private const double Reach = 0.7;

    /// <summary>All of them.</summary>
    public IEnumerable<Link> Of(SupplyTree tree) => tree.Distributions.Where(node => node.Parent is not null).Select(Feeder)
        .Concat(tree.Outlets.Where(outlet => outlet.Chain is not null).SelectMany(FromOutlet));

    private static Link Feeder(PowerNode node) => new(
        Address.Of("link") / "power" / node.Name,
        new LinkEnd(node.Parent!.Port with { Last = node.Loom.Count > 0 ? node.Loom[^1].Number : null }, node.Parent.Connector, node.Parent.Spot),
        new LinkEnd(new Port(node.Name, PortKind.Input, Number: null), node.Connector, node.Spot),
        Mains,
        Doubts.Of(node.Device!.Place?.Doubt),
        node.Device.At);

    private IEnumerable<Link> FromOutlet(PowerNode outlet)
    {
        var loads = outlet.Chain!.Loads;
        if (!Reaches(outlet, loads[0]))
        {
            yield return Make(loads[0], new LinkEnd(outlet.Port, outlet.Connector, outlet.Spot), OwnPlug(loads[0])?.Plug ?? loads[0].Inlet);
        }

        for (var index = 1; index < loads.Count; index++)
        {
            var before = loads[index - 1];
            yield return Make(loads[index], new LinkEnd(new Port(before.Name, PortKind.Link, Number: null), before.Link, before.LeadSpot, before.Height ?? 0), loads[index].Inlet);
        }
    }

    private static Link Make(PowerLoad load, LinkEnd from, string inlet) => new(
        Address.Of("link") / "power" / load.Name, from, new LinkEnd(new Port(load.Name, PortKind.Input, Number: null), inlet, load.LeadSpot, load.Height ?? 0), Mains, load.RestsOn, load.At);

    // A unit that always comes with its lead needs another only where that is too short.
    private bool Reaches(PowerNode outlet, PowerLoad load) =>
        OwnPlug(load) is { } own && own.Plug == outlet.Connector && outlet.Spot is { } from && load.LeadSpot is { } to
        && routes.Path(from, to).Meters <= own.Metres * Reach;

    private static (string Plug, double Metres)? OwnPlug(PowerLoad load)
    {
        foreach (var with in load.Piece?.Kind?.With ?? [])
        {
            if (load.Leads.GetValueOrDefault(with.Item) is { } cable && Mating.SocketOf(cable) == load.Inlet && Mating.PlugOf(cable) is { } plug)
            {
                return (plug, cable.Length.Is(out var length) ? length.Meters : 0);
            }
        }

        return null;
    }
}
