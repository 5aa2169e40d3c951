using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>All connections of a sound system, to be followed both ways.</summary>
/// <param name="links">Of sound and of network; what runs through neither is not asked for.</param>
/// <param name="units">What they connect.</param>
internal sealed class Wiring(IReadOnlyList<Link> links, SoundUnits units)
{
    private readonly ILookup<Port, Link> into = links.Where(link => Signals.IsSound(link.Carries)).ToLookup(link => link.To.Port);
    private readonly ILookup<Port, Link> outOf = links.Where(link => Signals.IsSound(link.Carries)).ToLookup(link => link.From.Port);

    /// <summary>What feeds an input; more than one is one too many.</summary>
    public IEnumerable<Link> Into(Port input) => into[input];

    /// <summary>What hangs on an output.</summary>
    public IEnumerable<Link> OutOf(Port output) => outOf[output];

    /// <summary>Outputs of a device that something hangs on, in order.</summary>
    public IEnumerable<Port> UsedOutputs(string device) =>
        outOf.Select(group => group.Key).Where(port => port.Device == device && port.Kind == PortKind.Output).OrderBy(port => port.Number);

    /// <summary>Inputs of a device that something feeds, in order.</summary>
    public IReadOnlyList<Port> FedInputs(string device) =>
        [.. into.Select(group => group.Key).Where(port => port.Device == device && port.Kind == PortKind.Input).OrderBy(port => port.Number)];

    /// <summary>Every box that a signal from this output reaches, in the order in which it does.</summary>
    public IReadOnlyList<(StackPlan Stack, StackedBox Box)> Reached(Port output)
    {
        var boxes = new List<(StackPlan, StackedBox)>();
        var seen = new HashSet<Port>();
        var next = new Queue<Port>([output]);
        while (next.TryDequeue(out var port))
        {
            foreach (var link in seen.Add(port) ? outOf[port] : [])
            {
                if (units.Box(link.To.Port.Device) is { } found)
                {
                    boxes.Add(found);
                }

                foreach (var further in Onward(link.To.Port))
                {
                    next.Enqueue(further);
                }
            }
        }

        return boxes;
    }

    /// <summary>The inputs that an output is made from: on a processor the side's own where it has one for each, else all of them.</summary>
    public IReadOnlyList<Port> Sources(Port output)
    {
        if (units.Device(output.Device)?.Role != SoundRole.Processor)
        {
            return [.. Back(output)];
        }

        var inputs = FedInputs(output.Device);
        var sides = Reached(output).Select(found => found.Stack.Side is null ? -1 : found.Stack.Index).Distinct().ToList();
        return sides is [>= 0 and var side] && inputs.Count > 1 ? [inputs[Math.Min(side, inputs.Count - 1)]] : inputs;
    }

    /// <summary>Follows a signal back from an input.</summary>
    public SignalPath Trace(Port input)
    {
        var way = new List<Link>();
        var seen = new HashSet<Port>();
        for (var at = input; ;)
        {
            if (!seen.Add(at))
            {
                return Ended(way, PathEnd.Loop, at.Device);
            }

            if (into[at].FirstOrDefault() is not { } link)
            {
                return Ended(way, Lacking(at), at.Device);
            }

            way.Insert(0, link);
            if (Source(link.From.Port) is { } end)
            {
                return Ended(way, end, link.From.Port.Device);
            }

            if (Sources(link.From.Port) is not [var before, ..])
            {
                return Ended(way, Lacking(new Port(link.From.Port.Device, PortKind.Input, Number: 1)), link.From.Port.Device);
            }

            at = before;
        }
    }

    private static SignalPath Ended(List<Link> way, PathEnd end, string at) =>
        new(way, end, at, way.Aggregate(Doubts.None, (sum, link) => sum.With(link.RestsOn)));

    // Where a signal starts, as far as loudspeakers are concerned; null for a unit that only hands it on.
    private PathEnd? Source(Port output) => (units.Device(output.Device), units.Box(output.Device)) switch
    {
        ({ Role: SoundRole.Console }, _) => PathEnd.Desk,
        ({ Role: SoundRole.StageBox, Device.To: null }, _) => PathEnd.NoDesk,
        ({ Role: SoundRole.StageBox, Device.To: { } to }, _) => to.IsKnown ? PathEnd.Desk : PathEnd.Open,
        (null, null) => PathEnd.NoSuchDevice,
        _ => null,
    };

    private PathEnd Lacking(Port input)
    {
        var written = units.Device(input.Device)?.Device.FedBy ?? ChainOf(input.Device)?.Written;
        return written switch
        {
            null => PathEnd.Unfed,
            { IsKnown: false } => PathEnd.Open,
            { Value.Numbers: null, Value.Kind: not PortKind.Link } => PathEnd.WhichOutput,
            _ => PathEnd.Unfed,
        };
    }

    private Chain? ChainOf(string box) => units.Box(box)?.Stack.Chains.FirstOrDefault(chain => chain.Boxes[0].Piece.Name == box);

    private IEnumerable<Port> Onward(Port input) => (units.Device(input.Device), units.Box(input.Device)) switch
    {
        ({ Role: SoundRole.Processor }, _) => UsedOutputs(input.Device),
        ({ Role: SoundRole.Amplifier }, _) => [input with { Kind = PortKind.Output }],
        (_, { }) => [new Port(input.Device, PortKind.Link, Number: null)],
        _ => [],
    };

    private IEnumerable<Port> Back(Port output) => (units.Device(output.Device), units.Box(output.Device)) switch
    {
        ({ Role: SoundRole.Amplifier }, _) => [output with { Kind = PortKind.Input }],
        (_, { }) => [new Port(output.Device, PortKind.Input, Number: null)],
        _ => [],
    };
}
