using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>A gig file.</summary>
internal static class GigShape
{
    /// <summary>The key that names the venue's file.</summary>
    public const string Venue = "venue";

    /// <summary>The key that names the company's file.</summary>
    public const string Company = "company";

    /// <summary>The key that names the stock's folder or file.</summary>
    public const string Stock = "stock";

    public static readonly RecordShape<Gig> It = new("gig", "A gig: what happens, where, with whose kit.", keys =>
    {
        var title = keys.Needed("gig", Written.Marked(Written.Text), "Its name on the paper.");
        var client = keys.Defaulted("client", Written.Text, "", "Who ordered it.", "not said");
        var day = keys.Open("day", Written.Date, "The date, with its weekday, of a gig of one day.");
        var days = keys.Open("days", Written.Things(DayShape.It, atLeast: 1), "The days of a longer gig, by name.");
        keys.OneOf("day", "days");
        var revision = keys.Optional("revision", Written.Name, "The letter of this revision.");
        var issued = keys.Open("issued", Written.Date, "When this revision goes out.");
        var isNew = keys.Defaulted("new", Written.Text, "", "What is new in it, in words.", "not said");
        keys.Optional(Company, Written.Path, "The company's file, as a path from this one.");
        keys.Optional(Venue, Written.Path, "The venue's file, as a path from this one.");
        keys.Optional(Stock, Written.Path, "The folder with the stock, or a file of it, as a path from this one.");
        var people = keys.Any("people", Written.TableOfThings(PersonShape.It, "name"), "The crew by name.");
        var schedule = keys.Any("schedule", Written.Table(ScheduleShape.It), "What happens when.");
        var states = keys.Any("show-states", Written.Table(ShowStateShape.It), "When each show state is; a state without a row may be at any time.");
        var quiet = keys.Open("quiet", Written.TimeRange, "Hours without sound that the occasion asks for, beside those of the venue.");
        var stage = keys.Optional("stage", StageShape.It, "The stage of a gig that has one.");
        var stages = keys.Any("stages", Written.Things(StageShape.It), "Stages by name.");
        keys.AtMostOneOf("stage", "stages");
        var around = keys.Defaulted("hall", AroundShape.It, [], "What stands around the stages.", "nothing");
        var sound = keys.Defaulted("sound", SoundShape.It, Sound.None, "The sound system.", "none");
        var acts = keys.Any("acts", Written.Things(ActShape.It), "Who plays, by name.");
        var temperature = keys.Open("temperature", Written.As(Quantities.Temperature), "Of the air at show time; without it as the company says.");
        var wind = keys.Optional("wind", Venues.WindShapes.It, "The wind that things stand up to in this gig, and who acts on it; what it leaves out is as the venue says.");
        var network = keys.Optional("network", NetworkShape.It, "The network that units with a control port are on; without it as the company says.");
        var power = keys.Defaulted("power", PowerShape.It, Power.None, "Distributions and circuits.", "worked out");
        var lighting = keys.Defaulted("lighting", LightingShape.It, Lighting.None, "Fixtures and where they are.", "none");
        var rigging = keys.Defaulted("rigging", RiggingShape.It, Rigging.None, "What hangs: trusses, bridles, and what trusses carry.", "nothing");
        var ways = keys.Any("cable-ways", Written.Things(CableWayShape.It), "Ways that cables take, by name.");
        var crew = keys.Defaulted("crew", CrewShape.It, Crew.None, "Hands and meals.", "nothing");
        var trucks = keys.Any("trucks", Written.Things(TruckShape.It), "What it all travels in, by name.");
        var extras = keys.Any("extras", Written.Table(ExtraShape.It), "Loose things to bring.");
        var allow = keys.Any("allow", AllowanceShape.It, "What stands for kit that is not chosen yet.");
        var measured = keys.Any("measured", Written.Table(MeasurementShape.It), "Readings from the site.");
        var accept = keys.Any("accept", Written.Table(AcceptanceShape.It), "Findings that somebody takes upon themselves.");
        return row => new Gig
        {
            Title = title(row).Value,
            At = title(row).At,
            Client = client(row),
            Days = Days(day(row), days(row)),
            Revision = revision(row),
            Issued = issued(row),
            New = isNew(row),
            People = people(row),
            Schedule = schedule(row),
            ShowStates = states(row),
            Quiet = quiet(row),
            Stages = stage(row) is { } only ? [only] : stages(row),
            Around = around(row),
            Acts = acts(row),
            Sound = sound(row),
            Temperature = temperature(row),
            Wind = wind(row),
            Network = network(row),
            Power = power(row),
            Lighting = lighting(row),
            Rigging = rigging(row),
            CableWays = ways(row),
            Crew = crew(row),
            Trucks = trucks(row),
            Extras = extras(row),
            Allowances = allow(row),
            Measured = measured(row),
            Accepted = accept(row),
        };
    });

    // Where the days themselves are still open there is one, and its date is the question.
    private static IReadOnlyList<Day> Days(Given<WrittenDate>? day, Given<IReadOnlyList<Day>>? days) => (day, days) switch
    {
        ({ } only, _) => [Show(only)],
        (_, { IsKnown: true } known) => known.Value,
        (_, { Doubt: { } doubt } open) => [Show(Given.Unknown<WrittenDate>(open.At, doubt))],
        _ => [],
    };

    private static Day Show(Given<WrittenDate> date) => new("show", date, DayKind.Show);
}
