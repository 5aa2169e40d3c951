using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Something on the way to a box that parts lows from highs.</summary>
/// <param name="By">The processor, or the item of the box, that does it.</param>
/// <param name="Filter">What it does.</param>
/// <param name="At">Where it parts; unknown where nobody says.</param>
/// <param name="IsDone">False where it is said but cannot be done there; null where nobody knows.</param>
/// <param name="MayProtect">Whether it was set by hand on an output, so that it may be there to protect a box, far off the crossover.</param>
public sealed record Crossing(string By, Filter Filter, Figure<Frequency> At, bool? IsDone, bool MayProtect);
