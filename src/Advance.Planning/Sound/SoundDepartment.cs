using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Places desks, stage boxes, processors and stacks, and what the stacks are joined with.</summary>
public static class SoundDepartment
{
    private const string Name = "sound";

    /// <summary>Places it all.</summary>
    public static SoundPlan Place(Gig gig, Company company, Stock stock, Ground ground)
    {
        var pieces = new Pieces(Name, stock);
        var drawn = new Drawn(ground);
        Devices.Stand([.. gig.Sound.Consoles, .. gig.Sound.StageBoxes, .. gig.Sound.Processors], pieces, drawn);
        var stacks = gig.Sound.Stacks.SelectMany(stack => Build(stack, company, stock, pieces, drawn)).ToList();
        var boxes = gig.Sound.StageBoxes.Select(device => Count(device, stock)).ToList();
        return new SoundPlan(pieces.Made, [.. Feeds(gig.Sound, stock, drawn)], boxes, stacks, drawn.Things);
    }

    private static IEnumerable<StackPlan> Build(Stack stack, Company company, Stock stock, Pieces pieces, Drawn drawn)
    {
        foreach (var (name, side, index) in Mirrored.Each(stack.Name, stack.Sides))
        {
            var address = pieces.At(name);
            var boxes = BoxesOf(stack, address, name, drawn.Find(stack.Place, side), pieces);
            Join(boxes, stock, pieces);
            var turn = Turn(stack.Aim?.Or(company.Aim) ?? company.Aim, side);
            drawn.Add(address, name, Look.Stack, stack.Place, Footprint.Of(boxes.FirstOrDefault()?.Piece.Kind), side: side, turn: turn);
            yield return new StackPlan(address, name, stack, boxes, Feed(stack, index), Doubts.Of(stack.Place.Doubt));
        }
    }

    private static List<StackedBox> BoxesOf(Stack stack, Address address, string name, Spot? spot, Pieces pieces)
    {
        var boxes = new List<StackedBox>();
        foreach (var counted in stack.FromFloorUp)
        {
            for (var number = 0; number < counted.Count; number++)
            {
                var position = boxes.Count + 1;
                var piece = pieces.Ask(address / position, $"{name} {position}", counted.Item, from: null, spot, stack.At);
                boxes.Add(new StackedBox(piece, counted.Stance));
            }
        }

        return boxes;
    }

    private static void Join(List<StackedBox> boxes, Stock stock, Pieces pieces)
    {
        for (var upper = 1; upper < boxes.Count; upper++)
        {
            var (below, above) = (boxes[upper - 1].TopFace, boxes[upper].BottomFace);
            var joint = stock.Kinds.Values.FirstOrDefault(kind => kind.Joint is { } joint
                && joint.Use != JointUse.Hanging && joint.Below == below && joint.Above == above);
            if (joint is not null)
            {
                pieces.Bring(boxes[upper].Piece, new CountedItem(joint.Joint!.Pieces, joint.Id), joint.At);
            }
        }
    }

    private static Port? Feed(Stack stack, int index) =>
        stack.FedBy is { } fed && fed.Is(out var ports) ? new Port(ports.Device, ports.Kind ?? PortKind.Output, ports.Numbers?.First + index) : null;

    // What was written as fed-by and to; the rest of the chain is another department's work.
    private static IEnumerable<Link> Feeds(Sound sound, Stock stock, Drawn drawn)
    {
        foreach (var box in sound.StageBoxes)
        {
            if (box.To is { } to && to.Is(out var desk))
            {
                yield return new Link(
                    Address.Of("link") / box.Name / desk.Device,
                    End(new Port(box.Name, PortKind.Link, Number: null), box, "network", stock, drawn),
                    End(new Port(desk.Device, PortKind.Link, Number: null), Named(sound, desk.Device), "network", stock, drawn),
                    "network",
                    Doubts.Of(box.Place?.Doubt),
                    box.At);
            }
        }

        foreach (var processor in sound.Processors)
        {
            if (processor.FedBy is not { } fed || !fed.Is(out var ports) || ports.Numbers is not { } numbers)
            {
                continue;
            }

            for (var number = 0; number < numbers.Count; number++)
            {
                yield return new Link(
                    Address.Of("link") / processor.Name / "in" / (number + 1),
                    End(new Port(ports.Device, ports.Kind ?? PortKind.Output, numbers.First + number), Named(sound, ports.Device), "mic-line", stock, drawn),
                    End(new Port(processor.Name, PortKind.Input, number + 1), processor, "mic-line", stock, drawn),
                    "mic-line",
                    Doubts.Of(processor.Place?.Doubt),
                    processor.At);
            }
        }
    }

    private static Device? Named(Sound sound, string name) =>
        sound.Consoles.Concat(sound.StageBoxes).Concat(sound.Processors).FirstOrDefault(device => device.Name == name);

    private static LinkEnd End(Port port, Device? device, string signal, Stock stock, Drawn drawn)
    {
        var kind = device?.Item is { IsKnown: true } item ? stock.Find(item.Value) : null;
        var connector = kind?.Ports.FirstOrDefault(row => row.Port == port.Kind && row.Signal == signal)?.Connector ?? "";
        return new LinkEnd(port, connector, drawn.Find(device?.Place));
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

    // Toe-in turns a box on stage right towards stage left, anticlockwise as drawn with the audience at the foot.
    private static double Turn(Aim aim, Side? side) =>
        aim is Aim.Toed toed ? toed.In.Degrees * (side == Side.StageRight ? -1 : 1) : 0;
}
