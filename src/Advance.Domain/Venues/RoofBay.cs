using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>A part of the roof, from one main truss or frame of it to the next, that may carry so much altogether.</summary>
/// <param name="Name">The venue's name for it.</param>
/// <param name="Limit">What all that hangs in it may weigh.</param>
/// <param name="At">Where it was written.</param>
public sealed record RoofBay(string Name, Given<Mass> Limit, Mark At);
