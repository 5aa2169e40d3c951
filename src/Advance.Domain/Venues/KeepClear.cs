using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>An exit, hydrant or lane that nothing may stand in.</summary>
/// <param name="What">Its name.</param>
/// <param name="Place">Where.</param>
/// <param name="Wide">How wide it must stay.</param>
/// <param name="Why">What it is for.</param>
/// <param name="At">Where it was written.</param>
public sealed record KeepClear(string What, Given<Place> Place, Given<Length>? Wide, string Why, Mark At);
