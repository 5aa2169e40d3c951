using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>Somebody else's load on a service.</summary>
/// <param name="What">Its name.</param>
/// <param name="InUse">What it draws.</param>
/// <param name="Time">From when to when; null for all day.</param>
/// <param name="At">Where it was written.</param>
public sealed record OtherLoad(string What, Given<ElectricCurrent> InUse, Given<MomentRange>? Time, Mark At);
