using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Everything that a gig says about who feeds whom.</summary>
internal static class WrittenPorts
{
    /// <summary>All ports that are named, in the order written; open ones are asked about already.</summary>
    public static IEnumerable<WrittenPort> Of(SoundPlan sound, SoundUnits units) =>
    [
        .. sound.Devices.SelectMany(device => Of(device, units)),
        .. sound.Piles.DistinctBy(stack => stack.Written).SelectMany(stack => Of(stack, units)),
    ];

    private static IEnumerable<WrittenPort> Of(SoundDevice device, SoundUnits units) =>
    [
        .. One(device.Piece.Address, device.Name, device.Device.FedBy, units.Takes(device.Name), isFed: true),
        .. One(device.Piece.Address, device.Name, device.Device.To, takes: null, isFed: false),
    ];

    private static IEnumerable<WrittenPort> Of(StackPlan stack, SoundUnits units) =>
        stack.Chains.SelectMany(chain => One(stack.Written, stack.Stack.Name, chain.Written, units.Takes(chain.Boxes[0].Piece.Name), isFed: true));

    private static IEnumerable<WrittenPort> One(Address where, string user, Given<PortRange>? written, string? takes, bool isFed) =>
        written is { } given && given.Is(out var ports) ? [new WrittenPort(where, user, ports, takes, isFed, given.At)] : [];
}
