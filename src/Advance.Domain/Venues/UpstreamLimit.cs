using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>What several services hang on together.</summary>
/// <param name="Name">Its key: <c>intake</c>.</param>
/// <param name="Supply">Voltage, phases and frequency.</param>
/// <param name="Rating">Of its protective device, on each line.</param>
/// <param name="SharedWith">What else hangs on it, besides what hangs on each service.</param>
/// <param name="At">Where it was written.</param>
public sealed record UpstreamLimit(string Name, Given<Supply> Supply, Given<ElectricCurrent> Rating, IReadOnlyList<OtherLoad> SharedWith, Mark At);
