using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Gives every line and every mix its port, in the order of the desk.</summary>
public static class PatchDepartment
{
    private const string Name = "patch";
    private const string EveryAct = "always live";

    /// <summary>Chooses ports. A line keeps the port it had in the earlier issue where it can.</summary>
    public static PatchPlan Choose(
        Gig gig, Stock stock, Policies policies, SoundPlan sound, Ground ground, Routes routes, Choices earlier)
    {
        _ = routes;
        var pieces = new Pieces(Name, stock);
        List<PatchLine> lines =
        [
            .. gig.Acts.SelectMany(act => LinesOf(act.Inputs, act.Name, ground, pieces)),
            .. LinesOf(gig.Sound.AlwaysLive, act: null, ground, pieces),
        ];
        List<PatchReturn> returns = [.. gig.Acts.SelectMany(act => ReturnsOf(act, ground, pieces, stock))];

        var inputs = PortField.Assign(
            [.. lines.Select(line => new PortWish(line.Address, line.Act, line.Channel, Fixed(line.Row.Port, line.Channel - line.Row.Channels.First, PortKind.Input)))],
            PortField.PortsOf(sound.Boxes, PortKind.Input),
            reserved: [],
            Issued(earlier, lines.Select(line => line.Address)));
        var outputs = PortField.Assign(
            [.. returns.Select(mix => new PortWish(mix.Address, mix.Act, mix.Number, Fixed(mix.Row.Port, mix.Number - mix.Row.Numbers.First, PortKind.Output)))],
            PortField.PortsOf(sound.Boxes, PortKind.Output),
            reserved: [.. sound.Links.Select(link => link.From.Port)],
            Issued(earlier, returns.Select(mix => mix.Address)));
        lines = [.. lines.Select((line, index) => line with { Port = inputs[index] })];
        returns = [.. returns.Select((mix, index) => mix with { Port = outputs[index] })];

        var uses = sound.Boxes.SelectMany(box => PortCount.Uses(box, lines, returns, sound.Links, policies)).ToList();
        return new PatchPlan(
            lines,
            returns,
            uses,
            PortCount.All(sound.Boxes.Select(box => box.Inputs)),
            PortCount.All(sound.Boxes.Select(box => box.Outputs)),
            pieces.Made,
            [.. lines.Select(line => LinkOf(line, sound.Boxes, ground)).OfType<Link>(), .. returns.Select(mix => LinkOf(mix, sound.Boxes, ground)).OfType<Link>()],
            [.. uses.SelectMany(use => use.Figures)],
            new Choices([.. lines.Select(line => Chosen(line.Address, line.Port)).Concat(returns.Select(mix => Chosen(mix.Address, mix.Port))).OfType<KeyValuePair<Address, string>>()]));
    }

    private static KeyValuePair<Address, string>? Chosen(Address address, Port? port) => port is null ? null : new(address, port.ToString());

    private static Dictionary<Address, Port> Issued(Choices earlier, IEnumerable<Address> addresses)
    {
        var ports = new Dictionary<Address, Port>();
        foreach (var address in addresses)
        {
            if (earlier.Of(address) is { } written && Port.Read(written) is { } port)
            {
                ports[address] = port;
            }
        }

        return ports;
    }

    private static IEnumerable<PatchLine> LinesOf(IReadOnlyList<InputRow> rows, string? act, Ground ground, Pieces pieces)
    {
        foreach (var row in rows.OrderBy(row => row.Channels))
        {
            var spot = ground.Find(row.Place);
            for (var channel = row.Channels.First; channel <= row.Channels.Last; channel++)
            {
                var address = pieces.At(act ?? EveryAct) / channel;
                var device = AskForDevice(row, channel - row.Channels.First, address, spot, pieces);
                yield return new PatchLine(address, channel, SourceOf(row, channel), act, row, device, spot, Port: null, Why(row.Port));
            }
        }
    }

    private static IEnumerable<PatchReturn> ReturnsOf(Act act, Ground ground, Pieces pieces, Stock stock)
    {
        foreach (var row in act.Mixes.OrderBy(row => row.Numbers))
        {
            var spot = ground.Find(row.Place);
            AskForWedges(act, row, spot, pieces, stock);
            for (var number = row.Numbers.First; number <= row.Numbers.Last; number++)
            {
                yield return new PatchReturn(pieces.At(act.Name) / "mix" / number, number, act.Name, row, spot, Port: null, Why(row.Port));
            }
        }
    }

    // A row of several channels names so many devices; where it does not divide, the first channels get one more.
    private static Piece? AskForDevice(InputRow row, int index, Address address, Spot? spot, Pieces pieces)
    {
        if (row.Device is not { } given || !given.Is(out var device))
        {
            return null;
        }

        var (each, more) = Math.DivRem(device.Count, row.Channels.Count);
        Piece? first = null;
        for (var number = 0; number < each + (index < more ? 1 : 0); number++)
        {
            var piece = pieces.Ask(address / "device", row.Source, device.Item, row.From, spot, row.At);
            first ??= piece;
            if (row.Stand.Length > 0)
            {
                pieces.Ask(address / "stand", row.Source, row.Stand.Replace(' ', '-'), from: null, spot, row.At);
            }
        }

        return first;
    }

    // What is in no stock is the act's own.
    private static void AskForWedges(Act act, MixRow row, Spot? spot, Pieces pieces, Stock stock)
    {
        if (row.With is not { } given || !given.Is(out var with))
        {
            return;
        }

        var owner = stock.Find(with.Item) is null ? OwnerKind.Act : OwnerKind.Shop;
        var from = row.From ?? Given.Of(new Owner(owner, owner == OwnerKind.Act ? act.Name : null), row.At);
        for (var number = 0; number < with.Count; number++)
        {
            pieces.Ask(pieces.At(act.Name) / "mix" / row.Numbers.First / "heard", row.For, with.Item, from, spot, row.At);
        }
    }

    private static Port? Fixed(Given<PortRange>? written, int index, PortKind kind) =>
        written is { } given && given.Is(out var range) && range.Numbers is { } numbers ? new Port(range.Device, kind, numbers.First + index) : null;

    private static Reason Why(Given<PortRange>? written) => written is { IsKnown: true } given ? new Reason.Fixed(given.At) : Reason.Derived.It;

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

    private static Link? LinkOf(PatchLine line, IReadOnlyList<PortBox> boxes, Ground ground) => line.Port is not { } port
        ? null
        : new Link(
            Address.Of("link") / line.Address.Text,
            new LinkEnd(new Port(line.Source, PortKind.Output, Number: null), Connector(line.Device?.Kind, PortKind.Output), line.Spot),
            new LinkEnd(port, Connector(boxes, port), BoxSpot(boxes, port, ground)),
            "mic-line",
            line.RestsOn,
            line.Row.At);

    private static Link? LinkOf(PatchReturn mix, IReadOnlyList<PortBox> boxes, Ground ground) => mix.Port is not { } port
        ? null
        : new Link(
            Address.Of("link") / mix.Address.Text,
            new LinkEnd(port, Connector(boxes, port), BoxSpot(boxes, port, ground)),
            new LinkEnd(new Port(mix.Row.For, PortKind.Input, Number: null), "xlr-3", mix.Spot),
            "mic-line",
            mix.RestsOn,
            mix.Row.At);

    private static string Connector(IReadOnlyList<PortBox> boxes, Port port) =>
        Connector(boxes.FirstOrDefault(box => box.Device.Name == port.Device)?.Kind, port.Kind);

    // A microphone's own connector is seldom written down: it is the usual one.
    private static string Connector(Kind? kind, PortKind which) =>
        kind?.Ports.FirstOrDefault(row => row.Port == which && row.Signal == "mic-line")?.Connector ?? "xlr-3";

    private static Spot? BoxSpot(IReadOnlyList<PortBox> boxes, Port port, Ground ground) =>
        ground.Find(boxes.FirstOrDefault(box => box.Device.Name == port.Device)?.Device.Place);
}
