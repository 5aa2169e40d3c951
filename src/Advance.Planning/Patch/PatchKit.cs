using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Asks for what an input list and a list of mixes take: microphones, DIs, stands, and what is heard with.</summary>
internal sealed class PatchKit(Pieces pieces, Ground ground, Stock stock)
{
    private const string EveryAct = "always live";

    private readonly HashSet<Address> taken = [];

    /// <summary>The channels of an input list, each with its microphone or DI, in the order of the desk.</summary>
    /// <param name="rows">As written.</param>
    /// <param name="act">Whose; null for what is up for every act.</param>
    public IEnumerable<PatchLine> Lines(IReadOnlyList<InputRow> rows, string? act)
    {
        foreach (var row in rows.OrderBy(row => row.Channels).ThenBy(row => row.Source, StringComparer.Ordinal).ThenBy(row => row.At))
        {
            var spot = ground.Find(row.Place);
            for (var channel = row.Channels.First; channel <= row.Channels.Last; channel++)
            {
                var address = Free(pieces.At(act ?? EveryAct) / channel);
                var devices = AskForDevices(row, channel - row.Channels.First, address, spot);
                var device = devices.Count > 0 ? devices[0] : null;
                yield return new PatchLine(address, channel, SourceOf(row, channel), act, row, device, spot, Port: null, Reason.Derived.It)
                {
                    Kit = [.. devices, .. AskForStands(row, devices.Count, address, spot)],
                    Phantom = PhantomNeed.Of(row, device?.Kind),
                };
            }
        }
    }

    /// <summary>The mixes of an act, with what they are heard with.</summary>
    public IEnumerable<PatchReturn> Returns(Act act)
    {
        foreach (var row in act.Mixes.OrderBy(row => row.Numbers).ThenBy(row => row.For, StringComparer.Ordinal).ThenBy(row => row.At))
        {
            var spot = ground.Find(row.Place);
            var addresses = Enumerable.Range(row.Numbers.First, row.Numbers.Count).Select(number => Free(pieces.At(act.Name) / "mix" / number)).ToList();
            var heard = AskForWedges(addresses[0], act, row, spot);
            for (var half = 0; half < addresses.Count; half++)
            {
                yield return new PatchReturn(addresses[half], row.Numbers.First + half, act.Name, row, spot, Port: null, Reason.Derived.It) { Heard = heard };
            }
        }
    }

    // A row of several channels names so many devices; where it does not divide, the first channels get one more.
    private List<Piece> AskForDevices(InputRow row, int index, Address address, Spot? spot)
    {
        if (row.Device is not { } given || !given.Is(out var device))
        {
            return [];
        }

        var (each, more) = Math.DivRem(device.Count, row.Channels.Count);
        return [.. Enumerable.Range(0, each + (index < more ? 1 : 0)).Select(_ => pieces.Ask(address / "device", row.Source, device.Item, row.From, spot, row.At))];
    }

    // A stand that is written is wanted, also where nobody knows yet what goes on it.
    private List<Piece> AskForStands(InputRow row, int devices, Address address, Spot? spot)
    {
        var count = row.Stand.Length == 0 ? 0 : row.Device is { IsKnown: true } ? devices : 1;
        return [.. Enumerable.Range(0, count).Select(_ => pieces.Ask(address / "stand", row.Source, row.Stand.Replace(' ', '-'), from: null, spot, row.At))];
    }

    // What is in no stock is the act's own.
    private List<Piece> AskForWedges(Address address, Act act, MixRow row, Spot? spot)
    {
        if (row.With is not { } given || !given.Is(out var with))
        {
            return [];
        }

        var owner = stock.Find(with.Item) is null ? OwnerKind.Act : OwnerKind.Shop;
        var from = row.From ?? Given.Of(new Owner(owner, owner == OwnerKind.Act ? act.Name : null), row.At);
        return
        [
            .. Enumerable.Range(1, with.Count)
                .Select(number => pieces.Ask(address / "heard", with.Count == 1 ? row.For : $"{row.For} {number}", with.Item, from, spot, row.At)),
        ];
    }

    private static string SourceOf(InputRow row, int channel)
    {
        var index = channel - row.Channels.First;
        if (row.Channels.Count == 1)
        {
            return row.Source;
        }

        var isPair = row.Channels.Count == 2 && row.Source.EndsWith(" L/R", StringComparison.Ordinal);
        return isPair ? $"{row.Source[..^4]} {(index == 0 ? "L" : "R")}" : $"{row.Source} {index + 1}";
    }

    // A channel that stands twice in one list is a fault, and has two addresses all the same.
    private Address Free(Address wanted)
    {
        var address = wanted;
        for (var number = 2; !taken.Add(address); number++)
        {
            address = wanted / number;
        }

        return address;
    }
}
