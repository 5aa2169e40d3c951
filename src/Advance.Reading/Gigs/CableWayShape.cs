using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>A way that cables take.</summary>
internal static class CableWayShape
{
    public static readonly RecordShape<CableWay> It = new("cable-way", "A way that cables take.", keys =>
    {
        var along = keys.Needed("along", Written.ListOfGiven(Written.Place, atLeast: 2), "From where, round which corners, to where.");
        var laid = keys.Defaulted("laid", Written.Text, "", "How it is laid.", "not said");
        var ramps = keys.Open("ramps", Written.Count, "How many ramps or bridges leads go up and over on; without it, one if laid speaks of one.");
        var how = keys.Open("how", Written.OneOf("laid-how", "how leads lie", ("apart", LaidHow.Apart), ("one layer", LaidHow.OneLayer), ("bunched", LaidHow.Bunched), ("ramp", LaidHow.Ramp), ("buried", LaidHow.Buried)), "How leads lie in it; without it they count as bunched.");
        var others = keys.Open("other-circuits", Written.Count, "How many loaded circuits of others share it.");
        var air = keys.Open("air", Written.As(Quantities.Temperature), "The highest temperature of the air in it.");
        var cover = keys.Open("cover-factor", Written.Percentage, "What covered cable in it still carries, as a share.");
        return row =>
        {
            var places = along(row);
            return new CableWay(row.Name, places[0], places[^1], [.. places.Skip(1).SkipLast(1)], laid(row), row.At) { Ramps = ramps(row), How = how(row), OtherCircuits = others(row), Air = air(row), CoverFactor = cover(row) };
        };
    });
}
