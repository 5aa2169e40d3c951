using Advance.Domain.Venues;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>A place in the roof that may carry load.</summary>
internal static class RoofPointShape
{
    public static readonly RecordShape<RoofPoint> It = new("roof-point", "A place in the roof that may carry load.", keys =>
    {
        var place = keys.Asked("place", Written.Place, "Where, measured from the venue's datum.");
        var height = keys.Asked("height", Written.Length, "Of the steel above the floor.");
        var limit = keys.Asked("limit", Written.As(Quantities.Load), "What it may carry, straight down.");
        var sideways = keys.Open("sideways", Written.As(Quantities.Load), "What it may be pulled sideways; without it it bears straight down alone.");
        var bearing = keys.Open("bearing", Written.Angle, "Which way it may be pulled so, there and back, clockwise from upstage; without it every way.");
        var plumb = keys.Open("off-plumb", Written.Angle, "How far off plumb it may be pulled.");
        var beam = keys.Open("beam", Written.Name, "The roof beam that it is on.");
        var along = keys.Open("along", Written.Length, "How far along that beam.");
        var bay = keys.Open("bay", Written.Name, "The bay of the roof that it is in, where that is not that of its beam.");
        var made = keys.Open(
            "made",
            Written.OneOf("point-made", "how a point is made", ("clamp", PointMade.Clamp), ("eye", PointMade.Eye), ("bare steel", PointMade.Bare)),
            "A clamp on a beam, an eye, or bare steel to put a sling around.");
        var moving = keys.Defaulted("limit-for", Written.OneOf("limit-for", "what a limit is for", ("rest", false), ("moving", true)), false, "Whether its limit is for what hangs at rest, or for what moves, with the dynamic factor.", "rest");
        var stiffness = keys.Open("stiffness", Written.As(Quantities.Stiffness), "How far it gives; without it it is taken as stiff.");
        var snag = keys.Open("snag", Written.As(Quantities.Load), "What it bears once when a load catches and its hoist pulls on; without it no more than its limit.");
        var rated = keys.Open("rated-by", Written.Text, "Who rated it, and when.");
        return row => new RoofPoint(row.Name, place(row), height(row), limit(row), row.At)
        {
            Sideways = sideways(row),
            OffPlumb = plumb(row),
            Bearing = bearing(row),
            Beam = beam(row),
            Along = along(row),
            Bay = bay(row),
            Made = made(row),
            IsForMoving = moving(row),
            Stiffness = stiffness(row),
            Snag = snag(row),
            RatedBy = rated(row),
        };
    });
}
