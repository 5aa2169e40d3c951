using Advance.Domain.Facts;

namespace Advance.Planning;

/// <summary>
/// The ports of all boxes of a gig in one row, and who has them while one act plays. Straight patch: channel 7 goes to the seventh port
/// where it is free. A fixed choice is obeyed or refused, never moved elsewhere.
/// </summary>
public sealed class PortField
{
    private readonly List<Port> ports = [];
    private readonly HashSet<Port> taken;

    /// <summary>The field of all boxes whose ports are known.</summary>
    public PortField(IEnumerable<PortBox> boxes, PortKind kind)
    {
        foreach (var box in boxes)
        {
            var count = (kind == PortKind.Input ? box.Inputs : box.Outputs).Value ?? 0;
            ports.AddRange(Enumerable.Range(1, count).Select(number => new Port(box.Device.Name, kind, number)));
        }

        taken = [];
    }

    private PortField(List<Port> ports, HashSet<Port> taken)
    {
        this.ports = ports;
        this.taken = taken;
    }

    /// <summary>The same field for one act: what it takes stays free for the others.</summary>
    public PortField ForOneAct() => new(ports, [.. taken]);

    /// <summary>Takes the port that somebody fixed; null where there is no such port, or it is taken.</summary>
    public Port? TakeFixed(Port wanted) => ports.Contains(wanted) && taken.Add(wanted) ? wanted : null;

    /// <summary>Takes the port of the earlier issue if it is free, else the port of the same number, else the first free one; null where none is.</summary>
    public Port? Take(int number, Port? earlier)
    {
        if (earlier is not null && TakeFixed(earlier) is { } kept)
        {
            return kept;
        }

        if (number <= ports.Count && taken.Add(ports[number - 1]))
        {
            return ports[number - 1];
        }

        return ports.Find(taken.Add);
    }
}
