using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Fixtures with their addresses, and the lines that run them.</summary>
/// <param name="Pieces">What it takes.</param>
/// <param name="Things">What is drawn.</param>
/// <param name="Links">From the desk to the first fixture of each line, and from fixture to fixture.</param>
/// <param name="Figures">Slots and unit loads.</param>
/// <param name="Chosen">Universe and first slot of each fixture.</param>
public sealed record LightingPlan(
    IReadOnlyList<Piece> Pieces, IReadOnlyList<Placed> Things, IReadOnlyList<Link> Links, IReadOnlyList<Stated> Figures, Choices Chosen);
