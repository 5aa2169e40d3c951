using Advance.Domain.Venues;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>A place in the roof that may carry load.</summary>
internal static class RoofPointShape
{
    public static readonly RecordShape<RoofPoint> It = new("roof-point", "A place in the roof that may carry load.", keys =>
    {
        var place = keys.Asked("place", Written.Place, "Where, measured from the venue's datum.");
        var height = keys.Asked("height", Written.Length, "Of the steel above the floor.");
        var limit = keys.Asked("limit", Written.Weight, "What it may carry, straight down.");
        return row => new RoofPoint(row.Name, place(row), height(row), limit(row), row.At);
    });
}
