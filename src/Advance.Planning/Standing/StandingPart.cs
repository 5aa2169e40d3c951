using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Something that stands with others as one: a box, a stand, what hangs on it, its ballast. Lengths are from the middle of the base and its underside.</summary>
/// <param name="Name">In words.</param>
/// <param name="Holds">Its weight, as far as it may be counted on.</param>
/// <param name="Across">Of its centre of gravity, towards stage left as it faces the audience.</param>
/// <param name="Back">Of its centre of gravity, towards its rear.</param>
/// <param name="Up">Of its centre of gravity.</param>
public sealed record StandingPart(string Name, Figure<Mass> Holds, Figure<Length> Across, Figure<Length> Back, Figure<Length> Up)
{
    /// <summary>How its weight is known; null where nobody knows it.</summary>
    public Known? How { get; init; }

    /// <summary>What the wind finds of it; null for what it finds nothing of, such as ballast on the ground.</summary>
    public WindFaces? Faces { get; init; }
}
