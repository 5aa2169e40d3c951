using Advance.Domain.Facts;
using Advance.Domain.Places;

namespace Advance.Domain.Gigs;

/// <summary>Where a service of the venue comes out, seen from the stage. The venue itself says it in words.</summary>
/// <param name="Name">The service's name.</param>
/// <param name="Place">Where.</param>
/// <param name="At">Where it was written.</param>
public sealed record ServicePlace(string Name, Given<Place> Place, Mark At);
