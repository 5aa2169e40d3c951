using Advance.Domain.Facts;
using Advance.Domain.Venues;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>A venue file.</summary>
internal static class VenueShape
{
    private static readonly IReadOnlyDictionary<string, string> NoLines = new Dictionary<string, string>(StringComparer.Ordinal);
    private static readonly IReadOnlyDictionary<string, Given<string>> NoFacts = new Dictionary<string, Given<string>>(StringComparer.Ordinal);

    public static readonly RecordShape<Venue> It = new("venue", "Where the gig is, and what the place allows.", keys =>
    {
        var name = keys.Needed("venue", Written.Text, "Its name on the paper.");
        var address = keys.Defaulted("address", Written.Text, "", "One line.", "not said");
        var contacts = keys.Any("contacts", Written.TableOfThings(ContactShape.It, "name"), "The venue's people.");
        var key = keys.Open("key", Written.Text, "Who holds the key, and from when.");
        var keyForLoadOut = keys.Open("key-for-load-out", Written.Text, "Who holds the key when the night is over.");
        var datum = keys.Defaulted("datum", Written.Text, "", "What the venue measures from.", "not said");
        var lines = keys.Defaulted("lines", Written.Facts, NoLines, "Lines that places may be measured from, by name, with what they are.", "none");
        var access = keys.Asked("access", Written.Table(AccessShape.It), "From the road to the stage, in that order.");
        var hall = keys.Defaulted("hall", HallShape.It, Hall.Unknown, "The room.", "not said");
        var ground = keys.Optional("ground", GroundShape.It, "What things stand on that do not stand on a stage.");
        var wind = keys.Optional("wind", WindShapes.It, "The wind that things stand up to on that site, and who acts on it.");
        var keepClear = keys.Any("keep-clear", Written.Table(KeepClearShape.It), "What must stay clear.");
        var roofPoints = keys.Asked("roof-points", Written.TableOfThings(RoofPointShape.It, "name"), "Points in the roof that may carry load.");
        var roofBeams = keys.Any("roof-beams", Written.TableOfThings(RoofBeamShape.It, "name"), "Beams of the roof that points hang on.");
        var roofBays = keys.Any("roof-bays", Written.TableOfThings(RoofBayShape.It, "name"), "Bays of the roof that each may carry so much.");
        var roofLimit = keys.Open("roof-limit", Written.As(Quantities.Load), "What the whole roof may carry.");
        var services = keys.Any("services", Written.Things(ServiceShape.It), "Supplies, by name.");
        var upstream = keys.Any("upstream-limits", Written.Things(ServiceShape.Upstream), "What several services hang on together, by name.");
        var rules = keys.Defaulted("rules", HouseRulesShape.It, HouseRules.None, "What the venue and its licence ask.", "not said");
        var safety = keys.Defaulted("safety", Written.OpenFacts, NoFacts, "Muster, first aid, hospital and whatever else there is, by name.", "not said");
        var welfare = keys.Defaulted("welfare", Written.OpenFacts, NoFacts, "Toilets, parking, meals and whatever else there is, by name.", "not said");
        return row => new Venue
        {
            Name = name(row),
            Address = address(row),
            Contacts = contacts(row),
            Key = key(row),
            KeyForLoadOut = keyForLoadOut(row),
            Datum = datum(row),
            Lines = lines(row),
            Access = access(row),
            Hall = hall(row),
            Ground = ground(row),
            Wind = wind(row),
            KeepClear = keepClear(row),
            RoofPoints = roofPoints(row),
            RoofBeams = roofBeams(row),
            RoofBays = roofBays(row),
            RoofLimit = roofLimit(row),
            Services = services(row),
            UpstreamLimits = upstream(row),
            Rules = rules(row),
            Safety = safety(row),
            Welfare = welfare(row),
        };
    });
}
