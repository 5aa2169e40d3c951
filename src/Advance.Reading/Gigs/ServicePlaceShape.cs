using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>Where a service comes out.</summary>
internal static class ServicePlaceShape
{
    public static readonly RecordShape<ServicePlace> It = new("service-place", "Where a service of the venue comes out, seen from the stage.", keys =>
    {
        var place = keys.Asked("place", Written.Place, "Where; the venue says it in words.");
        return row => new ServicePlace(row.Name, place(row), row.At);
    });
}
