using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>The connections that the gig says itself: what feeds a device, what it feeds, and what drives a stack.</summary>
/// <param name="units">What there is.</param>
internal sealed class WrittenFeeds(SoundUnits units)
{
    /// <summary>All of them that name their ports; the rest of the chain is chosen later.</summary>
    public IEnumerable<Link> Of(Sound sound, IReadOnlyList<StackPlan> stacks) =>
    [
        .. sound.Devices.SelectMany(To),
        .. sound.Devices.SelectMany(FedBy),
        .. stacks.SelectMany(stack => stack.Chains.Select(chain => Of(stack, chain)).OfType<Link>()),
    ];

    /// <summary>The connection from a chain's output to its first box; null while that output is open.</summary>
    public Link? Of(StackPlan stack, Chain chain) =>
        chain.FedBy is { } port && (port.Number is not null || port.Kind == PortKind.Link) ? First(stack, chain, port) : null;

    /// <summary>The connection from an output to the first box of a chain.</summary>
    public Link First(StackPlan stack, Chain chain, Port port)
    {
        var box = chain.Boxes[0].Piece.Name;
        return Make(Address.Of("link") / box / "in", port, new Port(box, PortKind.Input, Number: null), stack.RestsOn.With(Doubts.Of(chain.Written?.Doubt)), chain.Written?.At ?? stack.Stack.At);
    }

    /// <summary>A connection of what the receiving unit takes.</summary>
    public Link Make(Address address, Port from, Port to, Doubts restsOn, Mark at)
    {
        var signal = units.Takes(to.Device);
        return new Link(address, units.End(from, signal), units.End(to, signal), signal, restsOn, at);
    }

    // A stage box and its desk talk over the network; anything else feeds the ports it names from its outputs, in order.
    private IEnumerable<Link> To(Device device)
    {
        if (device.To is not { } written || !written.Is(out var to))
        {
            yield break;
        }

        if (to.Kind is null or PortKind.Link && units.Device(device.Name)?.Role == SoundRole.StageBox)
        {
            yield return new Link(
                Address.Of("link") / device.Name / to.Device,
                units.End(new Port(device.Name, PortKind.Link, Number: null), Signals.Network),
                units.End(new Port(to.Device, PortKind.Link, Number: null), Signals.Network),
                Signals.Network,
                Doubts.Of(device.Place?.Doubt),
                device.At);
        }

        for (var index = 0; to.Kind == PortKind.Input && index < (to.Numbers?.Count ?? 0); index++)
        {
            var input = new Port(to.Device, PortKind.Input, to.Numbers!.Value.First + index);
            var address = Address.Of("link") / device.Name / "out" / (index + 1);
            yield return Make(address, new Port(device.Name, PortKind.Output, index + 1), input, Doubts.Of(written.Doubt), written.At);
        }
    }

    private IEnumerable<Link> FedBy(Device device)
    {
        if (device.FedBy is not { } written || !written.Is(out var ports) || ports.Numbers is not { } numbers)
        {
            yield break;
        }

        for (var index = 0; index < numbers.Count; index++)
        {
            var output = new Port(ports.Device, ports.Kind ?? PortKind.Output, numbers.First + index);
            var input = new Port(device.Name, PortKind.Input, index + 1);
            yield return Make(Address.Of("link") / device.Name / "in" / (index + 1), output, input, Doubts.Of(device.Place?.Doubt).With(Doubts.Of(written.Doubt)), device.At);
        }
    }
}
