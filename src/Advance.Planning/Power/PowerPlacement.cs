namespace Advance.Planning;

/// <summary>Distributions, placed. What hangs on them is chosen later.</summary>
/// <param name="Pieces">What it takes.</param>
/// <param name="Things">What is drawn.</param>
public sealed record PowerPlacement(IReadOnlyList<Piece> Pieces, IReadOnlyList<Placed> Things);
