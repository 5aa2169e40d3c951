using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How far a pick hangs from straight under what holds it, and what that pulls sideways.</summary>
/// <param name="Off">Seen from above, from what holds it to the pick.</param>
/// <param name="Up">From the pick to what holds it.</param>
/// <param name="Lean">From the vertical.</param>
/// <param name="Pull">Sideways, at rest, on what holds it towards the pick, and on the pick back again.</param>
public sealed record PickLean(Figure<Length> Off, Figure<Length> Up, Figure<Angle> Lean, SidewaysPull Pull);
