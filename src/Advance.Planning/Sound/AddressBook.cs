using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>
/// Gives each unit with a control port an address in the gig's network. Ranges by what a unit is: desks from 11, stage boxes from 31,
/// processors from 51, amplifiers from 71, boxes from 101 with ten for each stack, all others from 201. Within its range a unit is numbered by
/// its place in the gig's list. What somebody wrote is obeyed, and what was issued is kept.
/// </summary>
internal static class AddressBook
{
    private const int Boxes = 101;
    private const int Others = 201;
    private const int EachStack = 10;

    /// <summary>Every unit that has a control port or runs software, with its address where it wants one.</summary>
    public static IReadOnlyList<NetworkUnit> Of(Gig gig, Company company, Stock stock, SoundPlan sound, Choices earlier)
    {
        var wishes = Wishes(gig, stock, sound).ToList();
        var written = gig.Network?.Subnet;
        var doubts = Doubts.Of(written?.Doubt);
        if (written is { IsKnown: false })
        {
            return [.. wishes.Select(wish => wish.Unit with { RestsOn = doubts })];
        }

        var subnet = written?.Value ?? company.Policies.Subnet;
        var book = Choose([.. wishes.Where(wish => wish.Unit.HasPort)], subnet, earlier);
        return [.. wishes.Select(wish => book.TryGetValue(wish.Unit.Address, out var unit) ? unit with { RestsOn = doubts.With(unit.RestsOn) } : wish.Unit)];
    }

    private static Dictionary<Address, NetworkUnit> Choose(IReadOnlyList<AddressWish> wishes, Subnet subnet, Choices earlier)
    {
        var book = new Dictionary<Address, NetworkUnit>();
        var taken = new HashSet<NetworkAddress>();
        foreach (var unit in wishes.Select(wish => wish.Unit).Where(unit => unit.Fixed is not null))
        {
            var given = unit.Fixed!.Value;
            book[unit.Address] = unit with { Network = given.Is(out var known) ? known : null, Why = new Reason.Fixed(given.At), RestsOn = Doubts.Of(given.Doubt) };
            taken.Add(known);
        }

        foreach (var unit in wishes.Select(wish => wish.Unit).Where(unit => !book.ContainsKey(unit.Address)))
        {
            if (earlier.Of(unit.NetworkAt) is { } text && NetworkAddress.Read(text) is { } issued && subnet.Holds(issued) && taken.Add(issued))
            {
                book[unit.Address] = unit with { Network = issued };
            }
        }

        foreach (var wish in wishes.Where(wish => !book.ContainsKey(wish.Unit.Address)))
        {
            book[wish.Unit.Address] = wish.Unit with { Network = Free(wish, subnet, taken) };
        }

        return book;
    }

    // Its own number, else the next free one of its range and after, else any.
    private static NetworkAddress? Free(AddressWish wish, Subnet subnet, HashSet<NetworkAddress> taken)
    {
        var range = Numbers(wish.Wanted, subnet.Count).Concat(Numbers(wish.First, subnet.Count)).Concat(Numbers(1, subnet.Count));
        foreach (var address in range.Select(subnet.Of))
        {
            if (taken.Add(address))
            {
                return address;
            }
        }

        return null;
    }

    private static IEnumerable<int> Numbers(int first, int last) => first > last ? [] : Enumerable.Range(first, last - first + 1);

    private static IEnumerable<AddressWish> Wishes(Gig gig, Stock stock, SoundPlan sound) =>
    [
        .. sound.Devices.GroupBy(device => device.Role).SelectMany(group => group.Select((device, index) => Wish(device.Piece, device.Device, FirstOf(group.Key), index))).OfType<AddressWish>(),
        .. sound.Piles.SelectMany((stack, index) => stack.Boxes.Select(box => Wish(box.Piece, null, Boxes + (index * EachStack), box.Position - 1))).OfType<AddressWish>(),
        .. gig.Lighting.Control is { } desk ? Light(desk, stock) : [],
    ];

    private static IEnumerable<AddressWish> Light(Device desk, Stock stock)
    {
        var kind = desk.Item.Is(out var item) ? stock.Find(item) : null;
        return kind is not null && HasPort(kind)
            ? [new AddressWish(new NetworkUnit(Address.Of("lighting") / "control", desk.Name, kind, Spot: null, HasPort: true, desk.Network, desk.At), Others, Others)]
            : [];
    }

    private static AddressWish? Wish(Piece piece, Device? device, int first, int index)
    {
        if (piece.Kind is not { } kind || (!HasPort(kind) && kind.Loudspeaker?.Software is not { Length: > 0 }))
        {
            return null;
        }

        var at = device?.At ?? (piece.Why is Need.AskedFor asked ? asked.At : kind.At);
        return new AddressWish(new NetworkUnit(piece.Address, piece.Name, kind, piece.Spot, HasPort(kind), device?.Network, at), first, first + index);
    }

    private static bool HasPort(Kind kind) => kind.Ports.Any(row => row.Signal == Signals.Network);

    private static int FirstOf(SoundRole role) => role switch
    {
        SoundRole.Console => 11,
        SoundRole.StageBox => 31,
        SoundRole.Processor => 51,
        _ => 71,
    };
}
