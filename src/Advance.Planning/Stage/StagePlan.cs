using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>What stands where on the stages and around them.</summary>
/// <param name="Stages">As written.</param>
/// <param name="Pieces">What it takes.</param>
/// <param name="Things">Everything drawn, in the order placed.</param>
public sealed record StagePlan(IReadOnlyList<Stage> Stages, IReadOnlyList<Piece> Pieces, IReadOnlyList<Placed> Things)
{
    /// <summary>The outline of the deck; null where there is none, or its size is open.</summary>
    public Outline? Outline { get; init; }

    /// <summary>Where each stage stands, in the order written.</summary>
    public IReadOnlyList<StagePlace> StandsAt { get; init; } = [];

    /// <summary>The venue's datum, seen from the first stage; null where there is no stage, or nobody knows where in the venue it stands.</summary>
    public Spot? Datum { get; init; }

    /// <summary>Every edge of every stage.</summary>
    public IReadOnlyList<StageEdge> Edges { get; init; } = [];

    /// <summary>What the stages are built from, for those that are built.</summary>
    public IReadOnlyList<DeckPlan> Decks { get; init; } = [];

    /// <summary>Every name that a place was said by.</summary>
    public IReadOnlyList<NamedPlace> Places { get; init; } = [];

    /// <summary>How high the stages are, and how many decks they want.</summary>
    public IReadOnlyList<Stated> Figures { get; init; } = [];
}
