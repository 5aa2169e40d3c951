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

    /// <summary>The run that makes a link; null where no lead is needed or none was found.</summary>
    public Run? Of(Address link) => Runs.FirstOrDefault(run => run.Link.Address == link);
}
