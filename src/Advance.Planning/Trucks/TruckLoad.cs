using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The load against what the vehicles carry and hold. Of several vehicles the sums are taken together: which takes what is the crew's.</summary>
/// <param name="Name">Of the vehicle, or of all of them: <c>Van + Trailer</c>.</param>
/// <param name="At">Where the first was written.</param>
/// <param name="Payload">What they may carry; unknown where the stock does not say.</param>
/// <param name="Known">What is known to be loaded: less than all of it where a weight is missing.</param>
/// <param name="Floor">Length of floor that it takes, stacked as the stock says; unknown where a size is.</param>
/// <param name="Length">Length of floor that there is.</param>
/// <param name="Volume">What it takes of the load space, in m³, if it were packed without gaps; unknown where a size is.</param>
/// <param name="Space">The load space, in m³.</param>
/// <param name="TooLong">Names of what does not go in however it is laid.</param>
/// <param name="Unstacked">Ids of kinds that stand on the floor because the stock does not say how many may stand on one another.</param>
/// <param name="Unsized">Ids of kinds whose size nobody knows.</param>
public sealed record TruckLoad(
    string Name,
    Mark At,
    Figure<Mass> Payload,
    Mass Known,
    Figure<Length> Floor,
    Figure<Length> Length,
    Figure<double> Volume,
    Figure<double> Space,
    IReadOnlyList<string> TooLong,
    IReadOnlyList<string> Unstacked,
    IReadOnlyList<string> Unsized)
{
    /// <summary>Straps across the load, one for each so many metres of it by policy.</summary>
    public required Figure<int> Straps { get; init; }

    /// <summary>Its numbers, each under its address.</summary>
    public IReadOnlyList<Stated> Figures =>
    [
        Stated.Of(Where / "payload", $"{Name}, payload", Payload),
        Stated.Of(Where / "floor", $"{Name}, length of floor that the load takes", Floor),
        Stated.Of(Where / "length", $"{Name}, length of floor that there is", Length),
        Stated.Of(Where / "volume", $"{Name}, volume of the load in m³", Volume),
        Stated.Of(Where / "space", $"{Name}, load space in m³", Space),
    ];

    /// <summary>Its name in the plan.</summary>
    public Address Where => Address.Of("load") / Name;
}
