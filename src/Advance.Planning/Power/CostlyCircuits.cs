using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Circuits fixed by hand that make the fullest rating fuller than it need be.</summary>
/// <param name="Rows">As written.</param>
/// <param name="Now">How full it is.</param>
/// <param name="Free">How full it need not be more than, were they free.</param>
public sealed record CostlyCircuits(IReadOnlyList<CircuitRow> Rows, Ratio Now, Ratio Free);
