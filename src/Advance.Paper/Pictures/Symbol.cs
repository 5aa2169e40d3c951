namespace Advance.Paper.Pictures;

/// <summary>A thing in a picture: its shapes, and the label that names it. No foreign label may stand on it.</summary>
/// <param name="Id">Unique in the scene; ties between labels are broken by it, so that the order of input does not matter.</param>
/// <param name="Shapes">From back to front.</param>
public sealed record Symbol(string Id, IReadOnlyList<Shape> Shapes) : Shape
{
    /// <summary>What names it; null for nothing.</summary>
    public Label? Label { get; init; }

    /// <summary>True for an area that other things and their labels may stand in, as a riser: only its own label must find room. Default false.</summary>
    public bool IsArea { get; init; }
}
