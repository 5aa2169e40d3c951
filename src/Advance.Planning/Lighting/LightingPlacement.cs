namespace Advance.Planning;

/// <summary>Fixtures and what carries them, placed.</summary>
/// <param name="Pieces">What it takes.</param>
/// <param name="Things">What is drawn.</param>
public sealed record LightingPlacement(IReadOnlyList<Piece> Pieces, IReadOnlyList<Placed> Things);
