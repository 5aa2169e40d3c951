using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>
/// What lines and mixes are patched to: the stage boxes, in the order written; where there are none, the desks. A desk beside stage boxes
/// takes only what somebody fixed to it by hand.
/// </summary>
internal sealed class PatchBoxes
{
    private readonly IReadOnlyList<PortBox> row;
    private readonly IReadOnlyList<PortBox> desks;
    private readonly Gig gig;
    private readonly SoundPlan sound;

    /// <summary>The boxes of a gig.</summary>
    public PatchBoxes(Gig gig, Stock stock, SoundPlan sound)
    {
        this.gig = gig;
        this.sound = sound;
        IReadOnlyList<PortBox> consoles = [.. gig.Sound.Consoles.Select(desk => BoxPort.Desk(desk, stock))];
        (row, desks) = sound.Boxes.Count > 0 ? (sound.Boxes, consoles) : (consoles, []);
    }

    /// <summary>Those that ports are chosen from.</summary>
    public IReadOnlyList<PortBox> Row => row;

    /// <summary>All of them.</summary>
    public IEnumerable<PortBox> All => row.Concat(desks);

    /// <summary>The box of that name; null where there is none.</summary>
    public PortBox? Find(string name) => All.FirstOrDefault(box => box.Device.Name == name);

    /// <summary>How many ports of its direction the box of a port has; null where that is not known.</summary>
    public int? Count(Port port) => Find(port.Device) is { } box ? (port.Kind == PortKind.Input ? box.Inputs : box.Outputs).Value : null;

    /// <summary>What plugs into a port; the usual connector where no stock describes the box.</summary>
    public string Connector(Port port) =>
        Find(port.Device) is { } box ? BoxPort.Of(box, port.Kind).FirstOrDefault(one => one.Port == port)?.Connector ?? MicLine.Connector : MicLine.Connector;

    /// <summary>Whether a port is balanced and gives 48 V; true also for a box that no stock describes, whose ports are taken for the usual ones.</summary>
    public bool IsBalanced(Port port) =>
        Find(port.Device) is not { } box || BoxPort.Of(box, port.Kind).FirstOrDefault(one => one.Port == port)?.IsBalanced != false;

    /// <summary>Ports that other devices hang on all day: loudspeakers, processors, smaller boxes.</summary>
    public IReadOnlySet<Port> Reserved(PortKind kind)
    {
        var linked = sound.Links.SelectMany(link => new[] { link.From.Port, link.To.Port });
        var fed = sound.Piles.Select(stack => stack.FedBy).OfType<Port>();
        var boxed = gig.Sound.StageBoxes.SelectMany(box => box.To is { } to && to.Is(out var ports) ? PortsIn(ports) : []);
        return linked.Concat(fed).Concat(boxed).Where(port => port.Kind == kind && port.Number is not null && Find(port.Device) is not null).ToHashSet();
    }

    /// <summary>The field of ports of one direction.</summary>
    /// <param name="kind">Inputs or outputs.</param>
    /// <param name="fixedByHand">What rows of the list fix; a box that no stock describes has the ports that are written.</param>
    public PortField Field(PortKind kind, IEnumerable<PortRange> fixedByHand)
    {
        var written = fixedByHand
            .Where(ports => ports.Kind is null || ports.Kind == kind)
            .SelectMany(ports => PortsIn(ports with { Kind = kind }))
            .Where(port => Find(port.Device) is not null && Count(port) is null);
        var ports = All.SelectMany(box => BoxPort.Of(box, kind)).ToList();
        return new PortField(
            row.SelectMany(box => BoxPort.Of(box, kind)).Select(one => one.Port),
            desks.SelectMany(box => BoxPort.Of(box, kind)).Select(one => one.Port).Concat(written),
            Reserved(kind),
            ports.Where(one => !one.IsBalanced).Select(one => one.Port));
    }

    private static IEnumerable<Port> PortsIn(PortRange ports) => ports is { Kind: { } kind, Numbers: { } numbers }
        ? Enumerable.Range(numbers.First, Math.Min(numbers.Count, MostInOneRange)).Select(number => new Port(ports.Device, kind, number))
        : [];

    // More than any box has; a slip of the pen must not make a million ports.
    private const int MostInOneRange = 1000;
}
