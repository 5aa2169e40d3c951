namespace Advance.Paper.Pictures;

/// <summary>Straight lines, one after the other.</summary>
/// <param name="Points">At least two.</param>
/// <param name="Closed">True for a polygon.</param>
public sealed record Polyline(IReadOnlyList<Point> Points, bool Closed = false) : Shape;
