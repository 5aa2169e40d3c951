using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>By how much a stack starts later than the system's first ones. A start value: it is set by ear or by measurement after.</summary>
/// <param name="Delay">0 for what everything else is timed from; unknown where a way is.</param>
/// <param name="From">What from, in words; empty for what is not delayed.</param>
public sealed record Timing(Figure<Duration> Delay, string From);
