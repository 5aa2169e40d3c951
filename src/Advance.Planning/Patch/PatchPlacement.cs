namespace Advance.Planning;

/// <summary>What the input lists and the mixes take, before any of them has a port.</summary>
/// <param name="Lines">Every channel of every act, and what is up all day.</param>
/// <param name="Returns">Every mix.</param>
/// <param name="Pieces">Microphones, DIs, stands, and what is heard with.</param>
public sealed record PatchPlacement(IReadOnlyList<PatchLine> Lines, IReadOnlyList<PatchReturn> Returns, IReadOnlyList<Piece> Pieces);
