using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>A vehicle.</summary>
internal static class TruckShape
{
    public static readonly RecordShape<Truck> It = new("truck", "A vehicle.", keys =>
    {
        var item = keys.Asked("item", Written.Name, "Its kind in the stock.");
        var driver = keys.Open("driver", Written.Text, "Who drives.");
        var parks = keys.Open("parks", Written.Text, "Where it stands.");
        return row => new Truck(row.Name, item(row), driver(row), parks(row), row.At);
    });
}
