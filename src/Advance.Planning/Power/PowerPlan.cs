using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Services, distributions and circuits, and what hangs on them.</summary>
/// <param name="Pieces">What was added: distributions, adapters.</param>
/// <param name="Things">What is drawn.</param>
/// <param name="Links">Feeders, leads from outlets, and links from unit to unit.</param>
/// <param name="Figures">Currents in use and at most, of each circuit, distribution and service.</param>
/// <param name="Chosen">Which outlet feeds which load.</param>
public sealed record PowerPlan(
    IReadOnlyList<Piece> Pieces, IReadOnlyList<Placed> Things, IReadOnlyList<Link> Links, IReadOnlyList<Stated> Figures, Choices Chosen);
