using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Chooses outputs for loudspeakers where the gig names only the device: the one of the last issue, else the next free one.</summary>
internal static class OutputChoice
{
    /// <summary>The output of each chain that wants one, by the chain's address. Where none is left, or none is known, there is no entry.</summary>
    public static IReadOnlyDictionary<Address, Port> Of(SoundPlan sound, SoundUnits units, Choices earlier)
    {
        var taken = sound.Links.Select(link => link.From.Port).ToHashSet();
        var chosen = new Dictionary<Address, Port>();
        var open = sound.Piles.SelectMany(stack => stack.Chains).Where(chain => IsOpen(chain, units)).ToList();
        foreach (var chain in open)
        {
            if (earlier.Of(chain.Address) is { } text && Port.Read(text) is { } port && port.Device == chain.FedBy!.Device && Exists(port, units) && taken.Add(port))
            {
                chosen[chain.Address] = port;
            }
        }

        foreach (var chain in open.Where(chain => !chosen.ContainsKey(chain.Address)))
        {
            if (Outputs(chain.FedBy!.Device, units).FirstOrDefault(port => !taken.Contains(port)) is { } free)
            {
                taken.Add(free);
                chosen[chain.Address] = free;
            }
        }

        return chosen;
    }

    // What comes out of stage boxes and desks is patched elsewhere; there the gig has to say.
    private static bool IsOpen(Chain chain, SoundUnits units) =>
        chain.FedBy is { Number: null, Kind: PortKind.Output } port && units.Device(port.Device)?.Role is SoundRole.Processor or SoundRole.Amplifier;

    private static bool Exists(Port port, SoundUnits units) => Outputs(port.Device, units).Contains(port);

    private static IEnumerable<Port> Outputs(string device, SoundUnits units) =>
        Enumerable.Range(1, Signals.Count(units.Piece(device)?.Kind, PortKind.Output) ?? 0).Select(number => new Port(device, PortKind.Output, number));
}
