using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>
/// The ports of all boxes of a gig in one row, and who has them. Straight patch: channel 7 goes to the seventh port where it is free. What
/// one act takes stays free for the others; what is up for every act is taken for all of them.
/// </summary>
internal sealed class PortField
{
    private readonly List<Port> ports = [];
    private readonly HashSet<(Port Port, string? Act)> taken = [];
    private readonly HashSet<Port> takenBySome = [];

    private PortField(IReadOnlyList<Port> ports, IEnumerable<Port> reserved)
    {
        this.ports.AddRange(ports);
        foreach (var port in reserved)
        {
            Take(port, act: null);
        }
    }

    /// <summary>The ports of all boxes whose ports are known, in the order of the boxes.</summary>
    public static IReadOnlyList<Port> PortsOf(IEnumerable<PortBox> boxes, PortKind kind) =>
    [
        .. boxes.SelectMany(box => Enumerable
            .Range(1, (kind == PortKind.Input ? box.Inputs : box.Outputs).Value ?? 0)
            .Select(number => new Port(box.Device.Name, kind, number))),
    ];

    /// <summary>
    /// A port for each wish, in the order of the wishes; null where none was left, or the fixed one is taken or does not exist. A wish keeps
    /// the port of the earlier issue unless that would leave somebody without any.
    /// </summary>
    /// <param name="wishes">Of all acts together.</param>
    /// <param name="ports">From <see cref="PortsOf"/>.</param>
    /// <param name="reserved">Ports that other devices hang on all day.</param>
    /// <param name="earlier">What was issued, by address; empty for a first plan.</param>
    public static IReadOnlyList<Port?> Assign(
        IReadOnlyList<PortWish> wishes, IReadOnlyList<Port> ports, IReadOnlyList<Port> reserved, IReadOnlyDictionary<Address, Port> earlier)
    {
        var kept = new PortField(ports, reserved).Assign(wishes, earlier);
        if (earlier.Count == 0 || kept.All(port => port is not null))
        {
            return kept;
        }

        var anew = new PortField(ports, reserved).Assign(wishes, new Dictionary<Address, Port>());
        return anew.Count(port => port is null) < kept.Count(port => port is null) ? anew : kept;
    }

    // Fixed ones choose first, then those that were issued with a port, then the rest; in each round what is up for every act comes first.
    private Port?[] Assign(IReadOnlyList<PortWish> wishes, IReadOnlyDictionary<Address, Port> earlier)
    {
        var given = new Port?[wishes.Count];
        var order = Enumerable.Range(0, wishes.Count)
            .OrderBy(index => wishes[index].Fixed is not null ? 0 : earlier.ContainsKey(wishes[index].Address) ? 1 : 2)
            .ThenBy(index => wishes[index].Act is not null)
            .ThenBy(index => wishes[index].Number);
        foreach (var index in order)
        {
            var wish = wishes[index];
            given[index] = wish.Fixed is { } wanted
                ? TakeIfFree(wanted, wish.Act)
                : Choose(wish, earlier.GetValueOrDefault(wish.Address));
        }

        return given;
    }

    private Port? Choose(PortWish wish, Port? earlier)
    {
        if (earlier is not null && TakeIfFree(earlier, wish.Act) is { } kept)
        {
            return kept;
        }

        var own = wish.Number <= ports.Count ? TakeIfFree(ports[wish.Number - 1], wish.Act) : null;
        return own ?? ports.Select(port => TakeIfFree(port, wish.Act)).FirstOrDefault(port => port is not null);
    }

    private Port? TakeIfFree(Port port, string? act)
    {
        var isFree = ports.Contains(port) && !taken.Contains((port, null)) && (act is null ? !takenBySome.Contains(port) : !taken.Contains((port, act)));
        if (!isFree)
        {
            return null;
        }

        Take(port, act);
        return port;
    }

    private void Take(Port port, string? act)
    {
        taken.Add((port, act));
        takenBySome.Add(port);
    }
}
