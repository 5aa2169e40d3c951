namespace Advance.Planning;

/// <summary>Fixtures and what carries them, placed.</summary>
/// <param name="Pieces">What it takes.</param>
/// <param name="Things">What is drawn.</param>
/// <param name="Positions">What carries fixtures, each on its side, in the order written.</param>
/// <param name="Fixtures">In the order of their numbers, without control addresses.</param>
/// <param name="Desk">Where the desk stands; null where there is none or nobody knows.</param>
public sealed record LightingPlacement(
    IReadOnlyList<Piece> Pieces,
    IReadOnlyList<Placed> Things,
    IReadOnlyList<LightingPosition> Positions,
    IReadOnlyList<FixturePlan> Fixtures,
    Spot? Desk);
