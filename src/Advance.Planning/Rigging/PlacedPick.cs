using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Where a truss or a hang is held, with what holds it.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Name">On paper: <c>T1-2</c>, counted along the truss.</param>
/// <param name="Pick">As written.</param>
/// <param name="Hoist">The hoist; null where it hangs dead.</param>
/// <param name="Gear">Slings, steels, shackles.</param>
public sealed record PlacedPick(Address Address, string Name, Pick Pick, Piece? Hoist, IReadOnlyList<Piece> Gear);
