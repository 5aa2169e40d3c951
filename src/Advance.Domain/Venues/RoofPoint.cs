using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>A place in the roof that may carry load.</summary>
/// <param name="Name">The venue's name for it.</param>
/// <param name="Place">In the venue's datum.</param>
/// <param name="Height">Of the steel above floor.</param>
/// <param name="Limit">What it may carry, straight down.</param>
/// <param name="At">Where it was written.</param>
public sealed record RoofPoint(string Name, Given<Place> Place, Given<Length> Height, Given<Mass> Limit, Mark At);
