using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>Where lows and highs are parted: <c>100 Hz in sub-18</c>.</summary>
/// <param name="Frequency">More than 0.</param>
/// <param name="Within">The item or the processor that does it.</param>
public readonly record struct Crossover(Frequency Frequency, string Within);
