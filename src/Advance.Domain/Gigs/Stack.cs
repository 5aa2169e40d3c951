using Advance.Domain.Facts;
using Advance.Domain.Places;

namespace Advance.Domain.Gigs;

/// <summary>Boxes standing on each other from the floor up; <c>sides</c> makes a mirrored pair of them.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Sides">Null for one stack that stands where its place says.</param>
/// <param name="Place">Of each stack.</param>
/// <param name="Aim">Null means as the company says.</param>
/// <param name="FromFloorUp">The boxes, lowest first.</param>
/// <param name="FedBy">One port a side, in the order of the sides.</param>
/// <param name="Crossover">Where and at what frequency it is crossed, as written; null where not said.</param>
/// <param name="At">Where it was written.</param>
public sealed record Stack(
    string Name,
    Sides? Sides,
    Given<Place> Place,
    Given<Aim>? Aim,
    IReadOnlyList<CountedItem> FromFloorUp,
    Given<PortRange>? FedBy,
    Given<Crossover>? Crossover,
    Mark At);
