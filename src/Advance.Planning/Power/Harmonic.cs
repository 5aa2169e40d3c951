using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A harmonic of a load's current.</summary>
/// <param name="Order">3, 5, 7 or 9.</param>
/// <param name="Share">Of the fundamental.</param>
public readonly record struct Harmonic(int Order, Figure<Ratio> Share);
