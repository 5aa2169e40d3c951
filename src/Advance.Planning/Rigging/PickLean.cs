using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How far a pick hangs from straight under what holds it, and what that pulls sideways.</summary>
/// <param name="Off">Seen from above, from the pick to what holds it.</param>
/// <param name="Up">From the truss to what holds it.</param>
/// <param name="Lean">From the vertical.</param>
/// <param name="Pull">Sideways, at rest, on the point and on the truss.</param>
public sealed record PickLean(Figure<Length> Off, Figure<Length> Up, Figure<Angle> Lean, Figure<Mass> Pull);
