using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Fixtures with their addresses, and the lines that run them.</summary>
/// <param name="Pieces">What it takes.</param>
/// <param name="Things">What is drawn.</param>
/// <param name="Links">From the desk to the first fixture of each line, and from fixture to fixture.</param>
/// <param name="Figures">Heights, slots and unit loads.</param>
/// <param name="Chosen">Universe and first slot of each fixture.</param>
public sealed record LightingPlan(
    IReadOnlyList<Piece> Pieces, IReadOnlyList<Placed> Things, IReadOnlyList<Link> Links, IReadOnlyList<Stated> Figures, Choices Chosen)
{
    /// <summary>What carries fixtures, each on its side, in the order written.</summary>
    public IReadOnlyList<LightingPosition> Positions { get; init; } = [];

    /// <summary>In the order of their numbers.</summary>
    public IReadOnlyList<FixturePlan> Fixtures { get; init; } = [];

    /// <summary>Lines of control, by universe.</summary>
    public IReadOnlyList<ControlLine> Lines { get; init; } = [];

    /// <summary>How full each universe is.</summary>
    public IReadOnlyList<UniverseUse> Universes { get; init; } = [];

    /// <summary>How many universes the desk sends; null where nobody knows.</summary>
    public int? DeskUniverses { get; init; }
}
