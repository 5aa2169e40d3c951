using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>What a set burns at one load.</summary>
/// <param name="Load">Share of its rating.</param>
/// <param name="AnHour">Volume burnt in an hour.</param>
/// <param name="At">Where it was written.</param>
public sealed record FuelRow(Ratio Load, Volume AnHour, Mark At);
