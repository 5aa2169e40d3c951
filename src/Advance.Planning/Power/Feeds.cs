using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary>
/// Hangs each distribution on what feeds it: what its own row says, or a circuit that names it, or the only service there is. An outlet that
/// was left open is the last that fits and is free, so that circuits count from the first one up.
/// </summary>
internal sealed class Feeds(
    IReadOnlyList<PowerNode> services,
    IReadOnlyList<PowerNode> distributions,
    IReadOnlyList<CircuitRow> circuits,
    Mating mating,
    Choices earlier)
{
    private const string ServiceWord = "service ";

    private readonly List<FeedFault> faults = [];
    private readonly List<KeyValuePair<Address, string>> chosen = [];
    private readonly HashSet<PowerNode> taken = [];

    /// <summary>What went wrong.</summary>
    public IReadOnlyList<FeedFault> Faults => faults;

    /// <summary>What was chosen.</summary>
    public Choices Chosen => new(chosen);

    /// <summary>The address under which the choice of a feed is remembered.</summary>
    public static Address AddressOf(PowerNode distribution) => Address.Of("power") / "feed" / distribution.Name;

    /// <summary>Hangs them all.</summary>
    public void Connect()
    {
        var wanted = distributions.Select(node => (Node: node, Wish: Wish(node))).Where(one => one.Wish is not null).ToList();
        foreach (var (node, wish) in wanted.Where(one => one.Wish is { Numbers.Count: > 1 }))
        {
            HangOnLoom(node, wish!);
        }

        foreach (var (node, wish) in wanted.Where(one => IsExact(one.Wish!) && one.Wish is not { Numbers.Count: > 1 }))
        {
            Hang(node, Exactly(node, wish!), wish!);
        }

        foreach (var (node, wish) in wanted.Where(one => !IsExact(one.Wish!)).OrderBy(one => earlier.Of(AddressOf(one.Node)) is null).ThenBy(one => one.Node.Address))
        {
            Hang(node, Somewhere(node, wish!), wish!);
        }
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private bool IsExact(PortRange wish) => wish.Kind is not null || Service(wish.Device) is not null;

    private PowerNode? Service(string name) =>
        services.FirstOrDefault(node => Same(node.Name, name)) ?? (Distribution(name) is null ? services.FirstOrDefault(node => Same(node.Service!.Name, name)) : null);

    private PowerNode? Distribution(string name) => distributions.FirstOrDefault(node => Same(node.Name, name));

    private PortRange? Wish(PowerNode node)
    {
        var rows = circuits.Where(row => Same(row.Feeds.Trim(), node.Name)).ToList();
        var written = rows.Select(row => new PortRange(row.Distribution, PortKind.Outlet, row.Number is { } number && number.Is(out var one) ? new NumberRange(one, one) : null)).ToList();
        var own = node.Device!.FedBy;
        if (own is { IsKnown: false } open)
        {
            return written.FirstOrDefault() ?? Fail(node, FeedFaultKind.Open, "fed from nobody knows where", Doubts.Of(open.Doubt));
        }

        if (own is { } said)
        {
            written.Insert(0, said.Value);
        }

        if (written.Skip(1).Any(other => !Agrees(written[0], other)))
        {
            Fail(node, FeedFaultKind.Twice, $"fed twice, from {Say(written[0])} and from {Say(written.First(other => !Agrees(written[0], other) && other != written[0]))}", Doubts.None);
        }

        // Of two that agree, the one that says more.
        return written.Count > 0 ? written.MaxBy(one => (one.Numbers is null ? 0 : 2) + (one.Kind is null ? 0 : 1)) : TheOnlyService(node);
    }

    private static bool Agrees(PortRange one, PortRange other) =>
        Same(one.Device, other.Device) && (one.Kind is null || other.Kind is null || one.Kind == other.Kind)
            && (one.Numbers is null || other.Numbers is null || one.Numbers == other.Numbers);

    private static string Say(PortRange ports) => new Port(ports.Device, ports.Kind ?? PortKind.Outlet, ports.Numbers?.First).ToString();

    private PortRange? TheOnlyService(PowerNode node)
    {
        var fitting = services.Where(service => mating.Bridges(service.Connector, node.Connector) is not null).ToList();
        var only = services.Count == 1 ? services[0] : fitting.Count == 1 ? fitting[0] : null;
        return only is not null ? new PortRange(only.Name) : Fail(node, FeedFaultKind.Open, "fed from nobody knows where", Doubts.None);
    }

    private PowerNode? Exactly(PowerNode node, PortRange wish)
    {
        if (Service(wish.Device) is { } service)
        {
            return service;
        }

        if (Distribution(wish.Device) is not { } parent)
        {
            var isOpen = wish.Device.StartsWith(ServiceWord, StringComparison.OrdinalIgnoreCase) && services.Count == 0;
            return FailNode(node, isOpen ? FeedFaultKind.Open : FeedFaultKind.NoSuch, $"fed by {wish.Device}, which nobody has described");
        }

        if (wish is { Kind: PortKind.Outlet, Numbers: null })
        {
            return Somewhere(node, wish);
        }

        var found = parent.Children.FirstOrDefault(child => wish.Kind == PortKind.Link
            ? child.Kind == PowerNodeKind.Link
            : wish.Kind == PortKind.Outlet && child.Kind == PowerNodeKind.Outlet && child.Number == wish.Numbers?.First);
        return found is null ? FailNode(node, FeedFaultKind.NoSuch, $"fed by {Say(wish)}, which there is not")
            : taken.Contains(found) ? FailNode(node, FeedFaultKind.NoSuch, $"fed by {Say(wish)}, which feeds something else")
            : found;
    }

    private PowerNode? Somewhere(PowerNode node, PortRange wish)
    {
        if (Distribution(wish.Device) is not { } parent)
        {
            return FailNode(node, FeedFaultKind.NoSuch, $"fed by {wish.Device}, which nobody has described");
        }

        var free = parent.Children.Where(child => !taken.Contains(child) && !IsFixed(child) && mating.Bridges(child.Connector, node.Connector) is not null).ToList();
        var link = wish.Kind is null ? free.FirstOrDefault(child => child.Kind == PowerNodeKind.Link && child.Connector == node.Connector) : null;
        var before = earlier.Of(AddressOf(node)) is { } text ? free.FirstOrDefault(child => child.Port.ToString() == text) : null;
        var found = link ?? before ?? free.LastOrDefault(child => child.Kind == PowerNodeKind.Outlet);
        if (found is null)
        {
            return FailNode(node, FeedFaultKind.NoSuch, $"fed by {parent.Name}, which has no outlet left that fits {node.Connector}");
        }

        chosen.Add(new(AddressOf(node), found.Port.ToString()));
        return found;
    }

    // A box fed by several outlets is the end of a loom: each of its circuits comes from one of them.
    private void HangOnLoom(PowerNode node, PortRange wish)
    {
        var (numbers, parent) = (wish.Numbers!.Value, Distribution(wish.Device));
        var outlets = (parent?.Children ?? []).Where(child => child.Kind == PowerNodeKind.Outlet && child.Number >= numbers.First && child.Number <= numbers.Last && !taken.Contains(child)).ToList();
        var own = node.Children.Count(child => child.Kind == PowerNodeKind.Outlet);
        if (outlets.Count < numbers.Count)
        {
            Fail(node, FeedFaultKind.NoSuch, $"fed by {Say(wish)} to {numbers.Last}, and not all of them are there and free", Doubts.None);
        }
        else if (outlets[0].Upwards.Contains(node))
        {
            Fail(node, FeedFaultKind.Loop, $"fed from itself, by way of {Say(wish)}", Doubts.None);
        }
        else if (own != outlets.Count)
        {
            Fail(node, FeedFaultKind.DoesNotFit, $"the end of a loom of {outlets.Count} circuits, and has {own} outlets", Doubts.None);
        }
        else
        {
            CheckFit(node, outlets[0]);
            node.HangOn(outlets);
            taken.UnionWith(outlets);
        }
    }

    private void CheckFit(PowerNode node, PowerNode parent)
    {
        if (mating.Bridges(parent.Connector, node.Connector) is null)
        {
            Fail(node, FeedFaultKind.DoesNotFit, $"its inlet, {node.Connector}, does not fit {parent.Name}, {parent.Connector}, and no lead or adapter owned joins them", Doubts.None);
        }
    }

    private bool IsFixed(PowerNode outlet) => outlet.Kind == PowerNodeKind.Outlet
        && circuits.Any(row => Same(row.Distribution, outlet.Device!.Name) && row.Number is { } number && number.Is(out var one) && one == outlet.Number);

    private void Hang(PowerNode node, PowerNode? parent, PortRange wish)
    {
        if (parent is null)
        {
            return;
        }

        if (parent.Upwards.Contains(node))
        {
            Fail(node, FeedFaultKind.Loop, $"fed from itself, by way of {Say(wish)}", Doubts.None);
            return;
        }

        CheckFit(node, parent);
        node.HangOn(parent);
        if (parent.Kind != PowerNodeKind.Service)
        {
            taken.Add(parent);
        }
    }

    private PowerNode? FailNode(PowerNode node, FeedFaultKind kind, Words says)
    {
        Fail(node, kind, says, Doubts.None);
        return null;
    }

    private PortRange? Fail(PowerNode node, FeedFaultKind kind, Words says, Doubts doubts)
    {
        faults.Add(new FeedFault(node.Device!, kind, says, doubts, node.Device!.At));
        return null;
    }
}
