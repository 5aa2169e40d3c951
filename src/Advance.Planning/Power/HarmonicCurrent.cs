using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How much of a current is of one order.</summary>
/// <param name="Order">1 for the fundamental.</param>
/// <param name="Current">Root mean square.</param>
public sealed record HarmonicCurrent(int Order, Figure<ElectricCurrent> Current);
