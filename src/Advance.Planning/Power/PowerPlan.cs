namespace Advance.Planning;

/// <summary>Distributions, placed. Circuits, currents and drops are worked out later.</summary>
/// <param name="Pieces">What it takes.</param>
/// <param name="Things">What is drawn.</param>
public sealed record PowerPlan(IReadOnlyList<Piece> Pieces, IReadOnlyList<Placed> Things);
