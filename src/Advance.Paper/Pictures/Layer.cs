namespace Advance.Paper.Pictures;

/// <summary>Shapes that are drawn together.</summary>
/// <param name="Name">As <c>deck</c> or <c>power</c>; becomes the class of the group in SVG.</param>
/// <param name="Shapes">From back to front.</param>
public sealed record Layer(string Name, IReadOnlyList<Shape> Shapes)
{
    /// <summary>True when no label may stand on a line of this layer, as on the edge of a deck. Symbols are always kept clear. Default false.</summary>
    public bool KeepsLabelsOff { get; init; }
}
