using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>What stands where on the stages and around them.</summary>
/// <param name="Stages">As written.</param>
/// <param name="Pieces">What it takes.</param>
/// <param name="Things">Everything drawn, in the order placed.</param>
public sealed record StagePlan(IReadOnlyList<Stage> Stages, IReadOnlyList<Piece> Pieces, IReadOnlyList<Placed> Things);
