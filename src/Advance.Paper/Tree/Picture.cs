using Advance.Paper.Pictures;

namespace Advance.Paper.Tree;

/// <summary>A picture, never split over pages, as large as there is room for up to its own limit.</summary>
/// <param name="Scene">What is drawn.</param>
/// <param name="Caption">Set under it; may be empty.</param>
public sealed record Picture(Scene Scene, IReadOnlyList<Inline> Caption) : Block
{
    /// <summary>No taller than this, in mm. Default the room on a page.</summary>
    public double? MostHeightMm { get; init; }
}
