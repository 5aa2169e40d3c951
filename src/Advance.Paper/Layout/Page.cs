using Advance.Paper.Tree;

namespace Advance.Paper.Layout;

/// <summary>A page with all that is on it.</summary>
/// <param name="Sheet">Whose page it is.</param>
/// <param name="Frame">Its paper.</param>
/// <param name="Strips">The strips of the body.</param>
/// <param name="Furniture">Its head and foot.</param>
internal sealed record Page(Sheet Sheet, PaperFrame Frame, List<PlacedStrip> Strips, Furniture Furniture)
{
    /// <summary>From 1, through the whole document.</summary>
    public int Number { get; init; }

    /// <summary>True for the first page of its sheet.</summary>
    public bool IsFirst { get; init; }
}
