using Advance.Domain.Gigs;
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
        return row =>
        {
            var places = along(row);
            return new CableWay(row.Name, places[0], places[^1], [.. places.Skip(1).SkipLast(1)], laid(row), row.At) { Ramps = ramps(row) };
        };
    });
}
