using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;

namespace Advance.Planning;

/// <summary>Finds the truss that something was said to be at, or beside on it: <c>at T1</c>, <c>2.2 m off centre of T1</c>.</summary>
internal static class HungTrusses
{
    /// <summary>The truss; null for what is at none.</summary>
    public static HungTruss? At(this Rigging rigging, Given<Place> given) => NameIn(given) is { } name
        ? rigging.Trusses.FirstOrDefault(truss => string.Equals(truss.Name, name, StringComparison.OrdinalIgnoreCase))
        : null;

    /// <summary>Whether it is all along the truss, and not beside its middle.</summary>
    public static bool IsWhole(Given<Place> given) => given.Is(out var place) && place is Place.AtThing;

    private static string? NameIn(Given<Place> given) => !given.Is(out var place) ? null : place switch
    {
        Place.AtThing thing => thing.Name,
        Place.Measured measured => measured.Of,
        _ => null,
    };
}
