using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// One place of the supply where current is limited or adds up. Made once, from the services down; what hangs on an outlet is put there when
/// it has been chosen.
/// </summary>
internal sealed class PowerNode
{
    // Between the square root of 3, for two legs of a wye, and 2.
    private const double WyeOrSplit = 1.87;

    private static readonly string[] OneLeg = [""];
    private static readonly string[] TwoLegs = ["L1", "L2"];
    private static readonly string[] ThreeLegs = ["L1", "L2", "L3"];

    private readonly List<PowerNode> children = [];

    // Asked for again and again, and only when all nodes hang in their places.
    private IReadOnlyList<string>? legs;
    private IReadOnlyList<int>? lines;

    private PowerNode(Address address, string name, PowerNodeKind kind, string connector, Figure<ElectricCurrent> limit)
    {
        Address = address;
        Name = name;
        Kind = kind;
        Connector = connector;
        Limit = limit;
    }

    /// <summary><c>power/PD1/3</c>.</summary>
    public Address Address { get; }

    /// <summary>On paper: <c>PD1 outlet 3</c>.</summary>
    public string Name { get; }

    public PowerNodeKind Kind { get; }

    /// <summary>What plugs in here; for a distribution, its inlet. Empty where unknown.</summary>
    public string Connector { get; }

    /// <summary>What it may carry on each leg.</summary>
    public Figure<ElectricCurrent> Limit { get; }

    /// <summary>The service, for one.</summary>
    public Service? Service { get; private init; }

    /// <summary>The limit that services share, for one.</summary>
    public UpstreamLimit? Shared { get; private init; }

    /// <summary>Of a service, what it hangs on together with others; it is no part of <see cref="Upwards"/>, where a service is the origin.</summary>
    public PowerNode? Upstream { get; private set; }

    /// <summary>The distribution that it is, or belongs to; null for a service.</summary>
    public Device? Device { get; private init; }

    /// <summary>That distribution's kind; null where unknown.</summary>
    public Kind? DeviceKind { get; private init; }

    /// <summary>The outlet's row, for an outlet.</summary>
    public OutletRow? Row { get; private init; }

    /// <summary>The outlet's number; 0 for what is none.</summary>
    public int Number { get; private init; }

    /// <summary>Where it is; null where nobody knows.</summary>
    public Spot? Spot { get; private init; }

    /// <summary>What feeds it; null for a service, and for what nothing feeds.</summary>
    public PowerNode? Parent { get; private set; }

    /// <summary>What hangs on it.</summary>
    public IReadOnlyList<PowerNode> Children => children;

    /// <summary>
    /// Of a box at the end of a loom, the outlets that feed its own, one each: its circuits share nothing but the way. Empty for everything else.
    /// </summary>
    public IReadOnlyList<PowerNode> Loom { get; private set; } = [];

    /// <summary>The loads on an outlet; null where there are none.</summary>
    public PowerChain? Chain { get; set; }

    /// <summary>Itself, and what carries it, up to the service.</summary>
    public IEnumerable<PowerNode> Upwards
    {
        get
        {
            for (var node = this; node is not null; node = node.Parent)
            {
                yield return node;
            }
        }
    }

    /// <summary>The uppermost node: a service, or a distribution that nothing feeds.</summary>
    public PowerNode Root => Parent?.Root ?? this;

    /// <summary>What arrives here; null where nobody knows.</summary>
    public Supply? Supply => Incoming is { } supply && IsBetweenLines ? VoltageFit.Between(supply) : Incoming;

    /// <summary>Whether two lines and no neutral come out here, as from an outlet for 208 V.</summary>
    public bool IsBetweenLines => Legs.Count == 2 && Upwards.Any(node => node.Row is { } row && OutletPhase.Read(row.Phase) is { Lines.Count: 2, HasNeutral: false } && node.Legs.Count == 2);

    /// <summary>The lines of the service that its current flows on, counted from 0.</summary>
    public IReadOnlyList<int> Lines => lines ??= [.. Legs.Select(leg => Root.Legs.Index().First(one => one.Item == leg).Index)];

    /// <summary>How the legs of its service stand to each other.</summary>
    public LegAngles Angles => AnglesOf(Root);

    /// <summary>The port that something plugs into here.</summary>
    public Port Port => Kind switch
    {
        PowerNodeKind.Outlet => new Port(Device!.Name, PortKind.Outlet, Number),
        PowerNodeKind.Link => new Port(Device!.Name, PortKind.Link, Number: null),
        _ => new Port(Name, PortKind.Outlet, Number: null),
    };

    /// <summary>The legs of the service that its current flows on. One leg has no name; an outlet on nobody knows which phase counts on all.</summary>
    public IReadOnlyList<string> Legs => legs ??= Kind switch
    {
        PowerNodeKind.Service or PowerNodeKind.Upstream => LegsOf(Incoming),
        PowerNodeKind.Outlet when Row is { } row && OutletPhase.Read(row.Phase) is { Lines: { Count: > 0 } own } && own.All(line => line <= Parent!.Legs.Count) => [.. own.Select(line => Parent!.Legs[line - 1])],
        PowerNodeKind.Distribution when Loom.Count > 0 => [.. Root.Legs.Where(leg => Loom.Any(outlet => outlet.Legs.Contains(leg)))],
        PowerNodeKind.Distribution when Parent is null => LegsOf(DeviceKind?.Mains?.Supply is { } takes && takes.Is(out var supply) ? supply : null),
        _ => Parent!.Legs,
    };

    /// <summary>Of a service, the legs of its upstream limit that one of its own hangs on: all of them where nobody says which.</summary>
    public IReadOnlyList<string> LegsUpstream(string leg) => Upstream is not { } above ? []
        : above.Legs.Count == Legs.Count ? [leg]
        : Legs.Count == 1 && Service!.UpstreamLine is { IsKnown: true } line && above.Legs.Contains(line.Value) ? [line.Value]
        : above.Legs;

    private Supply? Incoming => (Root.Service?.Supply ?? Root.Shared?.Supply) is { } given && given.Is(out var supply) ? supply : null;

    /// <summary>A service.</summary>
    public static PowerNode Of(Service service, Spot? spot) => new(
        Address.Of("power") / NameOf(service), NameOf(service), PowerNodeKind.Service, service.Connector.Or(""), Figure.From(service.Rating))
    {
        Service = service,
        Spot = spot,
    };

    /// <summary>What services hang on together, with them below it.</summary>
    public static PowerNode Of(UpstreamLimit limit, IEnumerable<PowerNode> services)
    {
        var node = new PowerNode(Address.Of("power") / "upstream" / limit.Name, limit.Name, PowerNodeKind.Upstream, "", Figure.From(limit.Rating)) { Shared = limit };
        foreach (var service in services)
        {
            service.Upstream = node;
            node.children.Add(service);
        }

        return node;
    }

    /// <summary>A distribution, with its outlets and its link below it.</summary>
    public static PowerNode Of(Device device, Kind? kind, Spot? spot)
    {
        var inlet = kind?.Mains?.Inlet ?? "";
        var address = Address.Of("power") / device.Name;
        var node = new PowerNode(address, device.Name, PowerNodeKind.Distribution, inlet, Connectors.Rating(inlet, new Reason.Fixed(kind?.At ?? device.At)))
        {
            Device = device,
            DeviceKind = kind,
            Spot = spot,
        };
        foreach (var (number, row) in OutletsOf(kind))
        {
            new PowerNode(address / number, $"{device.Name} outlet {number}", PowerNodeKind.Outlet, row.Connector, Figure.From(row.Rating))
            {
                Device = device,
                DeviceKind = kind,
                Row = row,
                Number = number,
                Spot = spot,
            }.HangOn(node);
        }

        if (kind?.Mains is { Link.Length: > 0 } mains)
        {
            var carries = mains.LinkCarries is { } given ? Figure.From(given) : new Figure<ElectricCurrent>(null, Doubts.None, Reason.Derived.It);
            new PowerNode(address / "link", $"{device.Name} link", PowerNodeKind.Link, mains.Link, carries) { Device = device, DeviceKind = kind, Spot = spot }.HangOn(node);
        }

        return node;
    }

    /// <summary>The service as it is called in a gig: <c>service A</c>.</summary>
    public static string NameOf(Service service) => $"service {service.Name}";

    /// <summary>Hangs it on another; the caller sees to it that nothing hangs on itself.</summary>
    public void HangOn(PowerNode parent)
    {
        Parent = parent;
        parent.children.Add(this);
    }

    /// <summary>Hangs each of its outlets on one of others, in that order; the caller sees to it that there are as many.</summary>
    public void HangOn(IReadOnlyList<PowerNode> loom)
    {
        (Parent, Loom) = (loom[0], loom);
        foreach (var (outlet, own) in loom.Zip(children.Where(child => child.Kind == PowerNodeKind.Outlet)))
        {
            own.HangOn(outlet);
        }
    }

    private static string[] LegsOf(Supply? supply) => supply?.Phases switch
    {
        Phases.Three => ThreeLegs,
        Phases.Split => TwoLegs,
        _ => OneLeg,
    };

    // Two legs of a wye are no split phase: 120 V and 208 V between them.
    private static LegAngles AnglesOf(PowerNode root) => root.Legs.Count switch
    {
        1 => LegAngles.Single,
        2 => root.Incoming is { BetweenLines: { } between, Voltages: [var first, ..] } && between.Volts < first.Least.Volts * WyeOrSplit ? LegAngles.TwoOfWye : LegAngles.SplitPhase,
        _ => LegAngles.ThreePhase,
    };

    // Of two rows for one outlet the first holds.
    private static IEnumerable<(int Number, OutletRow Row)> OutletsOf(Kind? kind) => (kind?.Outlets ?? [])
        .SelectMany(row => Enumerable.Range(row.Numbers.First, row.Numbers.Count).Select(number => (number, row)))
        .DistinctBy(one => one.number)
        .OrderBy(one => one.number);
}
