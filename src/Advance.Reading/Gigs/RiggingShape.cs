using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;
using Advance.Reading.Stocks;
using UnitsNet;

namespace Advance.Reading.Gigs;

/// <summary>What hangs.</summary>
internal static class RiggingShape
{
    private static readonly RecordShape<Pick> Pick = new("pick", "Where a truss is held.", keys =>
    {
        var along = keys.Needed("along", new GivenShape<Length>(Written.Length), "From its stage right end, or from its downstage end.");
        var hoist = keys.Open("hoist", Written.Name, "The kind of hoist; left out where it hangs dead.");
        var point = keys.Asked("point", Written.Name, "The venue's point, or a bridle.");
        var gear = keys.Any("gear", Written.List(Written.Counted), "What is between truss and point besides the hoist: slings, steels, shackles.");
        var bodyUp = keys.Defaulted("body", Written.OneOf("body", "where a hoist's body is", ("up", true), ("down", false)), false, "Whether the hoist's body hangs at the point or at the truss.", "down");
        var group = keys.Defaulted("group", Written.Name, "", "What it is controlled with; where that is a distribution, it feeds the hoist.", "not said");
        var hitch = keys.Open("hitch", SlingHitchShape.It, "How its slings are laid; without it as the company says, choked.");
        var holds = keys.Open("holds", RiggingKindShapes.Chords, "Which chords its slings hold.");
        var wrap = keys.Open("wrap", Written.OneOf("sling-wrap", "how often a sling goes around a chord", ("single", SlingWrap.Single), ("double", SlingWrap.Double)), "How often its slings go around a chord.");
        return row => new Pick(along(row), hoist(row), point(row), gear(row), row.At) { BodyUp = bodyUp(row), Group = group(row), Hitch = hitch(row), Holds = holds(row), Wrap = wrap(row) };
    });

    private static readonly RecordShape<HungTruss> Truss = new("hung-truss", "A straight truss on hoists.", keys =>
    {
        var item = keys.Asked("item", Written.Name, "The kind of its sections.");
        var length = keys.Asked("length", Written.Length, "From end to end.");
        var place = keys.Asked("place", Written.Place, "Of its middle.");
        var trim = keys.Asked("trim", Written.Height, "Of its lower chord.");
        var picks = keys.Any("picks", Written.Table(Pick), "Where it is held.");
        var runs = keys.Defaulted("runs", Written.OneOf("runs", "which way a truss runs", ("across", false), ("upstage", true)), false, "Across, or up- and downstage.", "across");
        var apex = keys.Open("apex", RiggingKindShapes.Apexes, "Of three chords, which way up it hangs; without it as its maker's figures are for.");
        var below = keys.Open("people-below", Written.OneOf("people-below", "who is below", ("never", PeopleBelow.Never), ("at rest", PeopleBelow.AtRest), ("moving", PeopleBelow.Moving)), "Who is below it, and when; without it people are, at rest.");
        var stop = keys.Open("group-stop", Written.YesNo, "Whether load cells stop all its hoists together.");
        var shape = keys.Defaulted("shape", Written.OneOf("truss-shape", "the shape of a truss", ("straight", ""), ("corner", "corner"), ("grid", "grid"), ("curved", "curved"), ("ground support", "ground support")), "", "Anything but a straight one is for its engineer.", "straight");
        var secondary = keys.Open("secondary", Written.Text, "What holds it when a hoist or a sling lets go: steels, how many, where to.");
        var peopleOn = keys.Open("people-on", Written.YesNo, "Whether somebody climbs it, stands on it or is lifted by it: that is for an engineer.");
        var joined = keys.Open("joined-to", Written.Text, "What else it is joined to, another truss or a structure: that is for an engineer.");
        return row => new HungTruss(row.Name, item(row), length(row), place(row), trim(row), picks(row), row.At)
        {
            RunsUpstage = runs(row),
            Apex = apex(row),
            Below = below(row),
            HasGroupStop = stop(row),
            Shape = shape(row),
            Secondary = secondary(row),
            HasPeopleOn = peopleOn(row),
            JoinedTo = joined(row),
        };
    });

    private static readonly RecordShape<Bridle> Bridle = new("bridle", "Legs from several points to one hook.", keys =>
    {
        var points = keys.Needed("points", Written.List(Written.Name), "The venue's points, two or three.");
        var legs = keys.Any("legs", Written.List(Written.Length), "How long each leg is made, in the order of the points.");
        var drop = keys.Open("drop", Written.Length, "How far under the lowest point its hook hangs, where legs are worked out.");
        var gear = keys.Any("gear", Written.List(Written.Counted), "What each leg is made of; left out where that is chosen from the stock.");
        var hitch = keys.Open("hitch", SlingHitchShape.It, "How the slings of its legs are laid; without it as the company says, choked.");
        return row => new Bridle(row.Name, points(row), legs(row), row.At) { Drop = drop(row), Gear = gear(row), Hitch = hitch(row) };
    });

    private static readonly RecordShape<TrussLoad> Load = new("truss-load", "What a truss carries that is written nowhere else.", keys =>
    {
        var truss = keys.Needed("truss", Written.Name, "Which truss.");
        var what = keys.Needed("what", Written.Text, "In words.");
        var item = keys.Open("item", Written.Name, "Its kind in the stock; left out for what is weighed here.");
        var count = keys.Defaulted("count", Written.Count, 1, "How many.", "1");
        var weight = keys.Open("weight", Written.As(Quantities.Load), "Of each, where its kind has none.");
        var along = keys.Open("along", Written.Length, "Where, from the end that picks are measured from; of a spread load, where it begins. Without it spread over the whole truss.");
        var to = keys.Open("to", Written.Length, "Where a spread load ends.");
        var offset = keys.Open("offset", Written.As(Lengths.Signed), "From the centre line of the truss: towards the audience, or towards stage right of one that runs upstage; negative the other way.");
        var secondary = keys.Open("secondary", Written.Text, "What holds it when its fixing lets go, where nothing of its kind in the stock does; none where nothing does.");
        var area = keys.Open("wind-area", Written.As(Quantities.Area), "What the wind sees of it where it hangs in the open: of a cloth width times height, of a loom nothing.");
        var sideways = keys.Open("sideways", Written.As(Quantities.Load), "What it pulls the truss sideways with, to either side, besides wind: a loom that runs off tight, a line that is tied off.");
        return row => new TrussLoad(truss(row), what(row), item(row), count(row), weight(row), along(row), to(row), offset(row), row.At) { Secondary = secondary(row), WindArea = area(row), Sideways = sideways(row) };
    });

    private static readonly RecordShape<Structure> Structure = new("structure", "Something that is put up and is for its engineer.", keys =>
    {
        var kind = keys.Needed("kind", Written.OneOf("structure-kind", "what is put up", ("guyed tower", "a guyed tower"), ("mast", "a mast"), ("roof", "a roof on legs"), ("scaffold", "a scaffold"), ("truss stand", "truss on a stand")), "What it is.");
        var joined = keys.Open("joined-to", Written.Text, "What it is joined to.");
        var people = keys.Open("people-on", Written.YesNo, "Whether somebody climbs it or stands on it.");
        return row => new Structure(row.Name, kind(row), joined(row), people(row), row.At);
    });

    public static readonly RecordShape<Rigging> It = new("rigging", "What hangs.", keys =>
    {
        var trusses = keys.Any("trusses", Written.Things(Truss), "By name.");
        var bridles = keys.Any("bridles", Written.Things(Bridle), "By name.");
        var dressing = keys.Any("loads", Written.Table(Load), "What trusses carry besides fixtures and what else is written elsewhere.");
        var structures = keys.Any("structures", Written.Things(Structure), "What else is put up and is for its engineer, by name: towers, masts, roofs, scaffolds.");
        var rigIn = keys.Open("rig-in", Written.Text, "Day and hours in which it is rigged, for the venue.");
        var rigOut = keys.Open("rig-out", Written.Text, "Day and hours in which it comes out, for the venue.");
        return row => new Rigging(trusses(row), bridles(row), dressing(row)) { Structures = structures(row), RigIn = rigIn(row), RigOut = rigOut(row) };
    });
}
