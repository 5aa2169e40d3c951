using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Places desks, stage boxes, processors, amplifiers, stacks and hangs, and what these are joined with.</summary>
public static class SoundDepartment
{
    private const string Name = "sound";

    /// <summary>Places it all.</summary>
    public static SoundPlan Place(Gig gig, Company company, Stock stock, Ground ground)
    {
        var pieces = new Pieces(Name, stock);
        var drawn = new Drawn(ground);
        var devices = DevicesOf(gig.Sound, pieces, drawn);
        var builder = new StackBuilder(company, stock, pieces, drawn);
        var stacks = gig.Sound.Stacks.SelectMany(builder.Build).ToList();
        var hangs = gig.Sound.Hangs.SelectMany(builder.Build).ToList();
        List<StackPlan> piles = [.. stacks, .. hangs];
        var boxes = gig.Sound.StageBoxes.Select(device => Count(device, stock)).ToList();
        var feeds = new WrittenFeeds(new SoundUnits(devices, piles));
        return new SoundPlan(pieces.Made, [.. feeds.Of(gig.Sound, piles)], boxes, stacks, drawn.Things)
        {
            Hangs = hangs,
            Devices = devices,
            Figures = [.. piles.SelectMany(stack => stack.Figures)],
        };
    }

    private static List<SoundDevice> DevicesOf(Sound sound, Pieces pieces, Drawn drawn)
    {
        return
        [
            .. Of(sound.Consoles, SoundRole.Console),
            .. Of(sound.StageBoxes, SoundRole.StageBox),
            .. Of(sound.Processors, SoundRole.Processor),
            .. Of(sound.Amplifiers, SoundRole.Amplifier),
        ];

        IEnumerable<SoundDevice> Of(IEnumerable<Device> devices, SoundRole role) =>
            devices.Select(device => new SoundDevice(device, role, Stand(device, pieces, drawn)));
    }

    private static Piece Stand(Device device, Pieces pieces, Drawn drawn)
    {
        var piece = pieces.Ask(pieces.At(device.Name), device.Name, device.Item.Or("TBC"), device.From, drawn.Find(device.Place), device.At);
        drawn.Add(piece.Address, device.Name, Look.Box, device.Place, Footprint.Of(piece.Kind));
        return piece;
    }

    private static PortBox Count(Device device, Stock stock)
    {
        var kind = device.Item.Is(out var id) ? stock.Find(id) : null;
        return new PortBox(device, kind, Ports(device, kind, PortKind.Input), Ports(device, kind, PortKind.Output));
    }

    private static Figure<int> Ports(Device device, Kind? kind, PortKind which)
    {
        var why = new Reason.Fixed(kind?.At ?? device.Item.At);
        int? count = kind is null || kind.Ports.Count == 0
            ? null
            : kind.Ports.Where(port => port.Port == which && port.Signal is "mic-line" or "line").Sum(port => port.Count);
        return new Figure<int>(count, Doubts.Of(device.Item.Doubt), why);
    }
}
