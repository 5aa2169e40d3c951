using Advance.Domain.Companies;
using Advance.Domain.Facts;

namespace Advance.Domain.Venues;

/// <summary>Where the gig is, and what the place allows.</summary>
public sealed record Venue
{
    /// <summary>What stands where a gig names no venue: everything about it is unknown.</summary>
    public static readonly Venue Unknown = new();

    /// <summary>As printed; empty where unknown.</summary>
    public string Name { get; init; } = "";

    /// <summary>One line; empty where unknown.</summary>
    public string Address { get; init; } = "";

    /// <summary>The venue's people.</summary>
    public IReadOnlyList<Contact> Contacts { get; init; } = [];

    /// <summary>What the venue measures from; empty where it does not say.</summary>
    public string Datum { get; init; } = "";

    /// <summary>Lines that places may be measured from, by name, with what they are.</summary>
    public IReadOnlyDictionary<string, string> Lines { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>From the road to the stage, in that order; unknown where it is TBC.</summary>
    public Given<IReadOnlyList<AccessStep>> Access { get; init; }

    /// <summary>The room.</summary>
    public Hall Hall { get; init; } = Hall.Unknown;

    /// <summary>What things stand on that do not stand on a stage; null where not said.</summary>
    public SiteGround? Ground { get; init; }

    /// <summary>The wind that things stand up to on that site; null where not said.</summary>
    public Wind? Wind { get; init; }

    /// <summary>What must stay clear.</summary>
    public IReadOnlyList<KeepClear> KeepClear { get; init; } = [];

    /// <summary>Points in the roof that may carry load.</summary>
    public Given<IReadOnlyList<RoofPoint>> RoofPoints { get; init; }

    /// <summary>The point of a name; null where nobody told of one.</summary>
    public RoofPoint? PointNamed(string name) =>
        RoofPoints.Is(out var points) ? points.FirstOrDefault(point => string.Equals(point.Name, name, StringComparison.OrdinalIgnoreCase)) : null;

    /// <summary>Beams that points hang on, in the order written.</summary>
    public IReadOnlyList<RoofBeam> RoofBeams { get; init; } = [];

    /// <summary>Bays of the roof that each may carry so much, in the order written.</summary>
    public IReadOnlyList<RoofBay> RoofBays { get; init; } = [];

    /// <summary>What the whole roof may carry; null where nobody says.</summary>
    public Given<UnitsNet.Mass>? RoofLimit { get; init; }

    /// <summary>Supplies, in the order written.</summary>
    public IReadOnlyList<Service> Services { get; init; } = [];

    /// <summary>What services hang on together, in the order written.</summary>
    public IReadOnlyList<UpstreamLimit> UpstreamLimits { get; init; } = [];

    /// <summary>What the venue forbids and when it ends.</summary>
    public HouseRules Rules { get; init; } = HouseRules.None;

    /// <summary>Muster, first aid, hospital and whatever else is said, by name.</summary>
    public IReadOnlyDictionary<string, Given<string>> Safety { get; init; } = new Dictionary<string, Given<string>>(StringComparer.Ordinal);

    /// <summary>Toilets, parking, meals and whatever else is said, by name.</summary>
    public IReadOnlyDictionary<string, Given<string>> Welfare { get; init; } = new Dictionary<string, Given<string>>(StringComparer.Ordinal);

    /// <summary>Who holds the key and from when; null where not said.</summary>
    public Given<string>? Key { get; init; }

    /// <summary>Who holds the key when the night is over; null where not said.</summary>
    public Given<string>? KeyForLoadOut { get; init; }
}
