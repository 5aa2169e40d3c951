using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>A stand, pipe or truss that carries fixtures; <c>sides</c> makes a mirrored pair.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Sides">Null for one.</param>
/// <param name="Place">Where.</param>
/// <param name="Item">What carries; null where it is in the house.</param>
/// <param name="Trim">How high; null where not said.</param>
/// <param name="At">Where it was written.</param>
public sealed record Position(string Name, Sides? Sides, Given<Place> Place, Given<string>? Item, Given<HeightFrom>? Trim, Mark At)
{
    /// <summary>How long a pipe or truss is, from end to end; fixtures are spread along it. Null where not said.</summary>
    public Given<Length>? Length { get; init; }

    /// <summary>Of a stand, what keeps it from tipping or sliding.</summary>
    public IReadOnlyList<BallastRow> Ballast { get; init; } = [];
}
