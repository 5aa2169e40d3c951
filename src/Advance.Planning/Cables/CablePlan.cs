using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Every run, and the leads it is made of.</summary>
/// <param name="Runs">In the order of their addresses.</param>
/// <param name="Pieces">The leads.</param>
/// <param name="Figures">Lengths needed and made up.</param>
/// <param name="Chosen">Which leads make which run.</param>
public sealed record CablePlan(
    IReadOnlyList<Run> Runs, IReadOnlyList<Piece> Pieces, IReadOnlyList<Stated> Figures, Choices Chosen)
{
    /// <summary>No cables at all.</summary>
    public static readonly CablePlan None = new([], [], [], Choices.None);

    /// <summary>The open questions behind the choice as a whole: leads are picked for all runs at once.</summary>
    public Doubts RestsOn => Runs.Aggregate(Doubts.None, (sum, run) => sum.With(run.Needed.RestsOn));

    /// <summary>Whether it is known where the deck is: without it every way is a straight line.</summary>
    internal bool KnowsDeck { get; init; } = true;

    /// <summary>What the venue keeps clear.</summary>
    internal IReadOnlyList<NoGo> Keep { get; init; } = [];

    /// <summary>The run that makes a link; null where none does. It has no leads where none were found.</summary>
    public Run? Of(Address link) => Runs.FirstOrDefault(run => run.Links.Any(made => made.Address == link));
}
