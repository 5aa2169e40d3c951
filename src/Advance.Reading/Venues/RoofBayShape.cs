using Advance.Domain.Venues;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>A bay of the roof.</summary>
internal static class RoofBayShape
{
    public static readonly RecordShape<RoofBay> It = new("roof-bay", "A part of the roof that may carry so much altogether.", keys =>
    {
        var limit = keys.Asked("limit", Written.As(Quantities.Load), "What all that hangs in it may weigh.");
        return row => new RoofBay(row.Name, limit(row), row.At);
    });
}
