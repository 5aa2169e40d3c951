using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A service, a distribution's inlet or an outlet, and what it carries.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Name">On paper: <c>service A</c>, <c>PD1</c>, <c>PD1 outlet 3</c>.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Connector">What plugs in here; empty where unknown.</param>
/// <param name="Limit">What it may carry on each leg.</param>
/// <param name="Legs">What flows on each leg.</param>
/// <param name="FedBy">What feeds it; null for a service and for what nothing feeds.</param>
/// <param name="At">Where it was written.</param>
public sealed record SupplyPoint(
    Address Address,
    string Name,
    PowerNodeKind Kind,
    string Connector,
    Figure<ElectricCurrent> Limit,
    IReadOnlyList<LegUse> Legs,
    SupplyPoint? FedBy,
    Mark At)
{
    /// <summary>The service, for one.</summary>
    public Service? Service { get; init; }

    /// <summary>The limit that services share, for one.</summary>
    public UpstreamLimit? Shared { get; init; }

    /// <summary>The distribution that it is, or belongs to.</summary>
    public Device? Device { get; init; }

    /// <summary>That distribution's kind; null where unknown.</summary>
    public Kind? DeviceKind { get; init; }

    /// <summary>The row of an outlet.</summary>
    public OutletRow? Row { get; init; }

    /// <summary>The number of an outlet; 0 for what is none.</summary>
    public int Number { get; init; }

    /// <summary>Of a box at the end of a loom, the outlets that feed its own, one each; empty for everything else.</summary>
    public IReadOnlyList<SupplyPoint> Loom { get; init; } = [];

    /// <summary>What arrives here; null where nobody knows.</summary>
    public Supply? Supply { get; init; }

    /// <summary>The lines of the service that its legs are, counted from 0.</summary>
    public IReadOnlyList<int> Lines { get; init; } = [0];

    /// <summary>How the legs of its service stand to each other.</summary>
    public LegAngles Angles { get; init; } = LegAngles.Single;

    /// <summary>Every load that hangs on it, also further down, and between which conductors it lies.</summary>
    public IReadOnlyList<LoadDraw> Draws { get; init; } = [];

    /// <summary>Every load that hangs on it, also further down.</summary>
    public IReadOnlyList<PowerLoad> Loads { get; init; } = [];

    /// <summary>What its neutral carries; null where it has one leg, or no neutral, or nothing hangs on it.</summary>
    public NeutralUse? Neutral { get; init; }

    /// <summary>What each leg gets if its neutral opens; null where nothing would move.</summary>
    public NeutralLost? NeutralLost { get; init; }

    /// <summary>What is counted on it for kit that is not chosen yet, also further down.</summary>
    public IReadOnlyList<PowerAllowance> Allowances { get; init; } = [];

    /// <summary>In the protective conductor, all units together. Magnitudes: an upper bound, since they do not meet in phase.</summary>
    public Figure<ElectricCurrent> Leakage => Total($"{Name}, leakage", Loads.Select(load => load.Leakage));

    /// <summary>All units switched on at once, peak.</summary>
    public Figure<ElectricCurrent> Inrush => Total($"{Name}, all switched on at once", Loads.Select(load => load.Inrush));

    /// <summary>The nearest device that opens by itself: that of an outlet, or the service's; null where nobody knows of one.</summary>
    public SupplyPoint? Protection => Upwards.FirstOrDefault(point => point.Service is not null || point.Row is { Device.Length: > 0 });

    /// <summary>The outlets that feed it: several for the end of a loom, none where nothing does.</summary>
    public IReadOnlyList<SupplyPoint> Feeds => Loom.Count > 0 ? Loom : FedBy is { } one ? [one] : [];

    /// <summary>Of an outlet at the end of a loom, the box that it is on; null for everything else.</summary>
    public Device? LoomEnd => Kind == PowerNodeKind.Outlet && FedBy?.Kind == PowerNodeKind.Outlet ? Device : null;

    /// <summary>The leg that carries most in use; one on which nobody knows what flows comes first.</summary>
    public LegUse Worst => Legs.FirstOrDefault(use => use.InUse.Value is null) ?? Legs.MaxBy(use => use.InUse.Value!.Value.Amperes)!;

    /// <summary>Itself, and what carries it, up to the service.</summary>
    public IEnumerable<SupplyPoint> Upwards
    {
        get
        {
            for (var point = this; point is not null; point = point.FedBy)
            {
                yield return point;
            }
        }
    }

    /// <summary>The uppermost: a service, or a distribution that nothing feeds.</summary>
    public SupplyPoint Root => Upwards.Last();

    /// <summary>The service it hangs on; null where nobody knows.</summary>
    public Service? Origin => Upwards.Last().Service;

    /// <summary>Whose rules hold here: what the venue says, else what voltage and frequency suggest; null where neither is known.</summary>
    public WiringRules? Rules => Origin?.Rules is { IsKnown: true } said ? said.Value
        : Supply is null ? null
        : NorthAmerica.Has(Supply) ? WiringRules.Nec : WiringRules.Iec;

    /// <summary>Who else hangs on it, and what is only allowed for, to end a sentence with; empty where nothing is.</summary>
    internal string SharedWords =>
        ((Service?.SharedWith ?? Shared?.SharedWith) is { Count: > 0 } others ? $"; shared with {string.Join(", ", others.Select(other => other.What))}" : "")
        + (Allowances.Count > 0 ? $"; with an allowance for {string.Join(", ", Allowances.Select(one => one.Row.What))}" : "");

    /// <summary>Its numbers, each under its address.</summary>
    internal IEnumerable<Stated> Figures =>
    [
        .. Legs.SelectMany(use => new[]
        {
            Stated.Of(AddressOf(use.Leg, "in-use"), $"{NameOf(use)}, current in use, worst in {StateShares.Word(use.State)}", use.InUse),
            Stated.Of(AddressOf(use.Leg, "at-most"), $"{NameOf(use)}, current at most", use.AtMost),
            Stated.Of(AddressOf(use.Leg, "of-limit"), $"{NameOf(use)}, in use as a share of what it may carry", use.OfLimit),
        }),
        .. Neutral is null ? [] : new[]
        {
            Stated.Of(Address / "neutral" / "in-use", $"{Name}, neutral in use, worst in {Neutral.InUse.Words}", Neutral.InUse.Current),
            Stated.Of(Address / "neutral" / "at-most", $"{Name}, neutral at most, worst in {Neutral.AtMost.Words}", Neutral.AtMost.Current),
        },
        .. NeutralLost is null ? [] : NeutralLost.Legs.Select(leg => Stated.Of(AddressOf(leg.Leg, "neutral-lost"), $"{Name} {leg.Leg}, voltage if the neutral opens, worst in {StateShares.Word(NeutralLost.State)}", leg.Voltage)),
        Stated.Of(Address / "leakage", $"{Name}, leakage", Leakage),
        Stated.Of(Address / "inrush", $"{Name}, inrush", Inrush),
    ];

    private static Figure<ElectricCurrent> Total(string name, IEnumerable<Figure<ElectricCurrent>> parts) =>
        Sum.Of(name, "I = Σ Iᵢ", Publication.Arithmetic).PutAll("Iᵢ", parts).Gives(terms => ElectricCurrent.FromAmperes(terms.Values.Sum(part => part.Amperes)));

    private string NameOf(LegUse use) => use.Leg.Length > 0 ? $"{Name} {use.Leg}" : Name;

    private Address AddressOf(string leg, string what) => leg.Length > 0 ? Address / leg / what : Address / what;
}
