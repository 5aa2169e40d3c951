using Advance.Domain.Facts;
using Advance.Domain.Places;

namespace Advance.Domain.Gigs;

/// <summary>A way that cables take.</summary>
/// <param name="Name">Its key.</param>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="By">Corners on the way, in order.</param>
/// <param name="Laid">How it is laid, as written.</param>
/// <param name="At">Where it was written.</param>
public sealed record CableWay(string Name, Given<Place> From, Given<Place> To, IReadOnlyList<Given<Place>> By, string Laid, Mark At);
