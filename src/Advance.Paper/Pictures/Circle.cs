namespace Advance.Paper.Pictures;

/// <summary>A circle.</summary>
/// <param name="Middle">Its middle.</param>
/// <param name="Radius">In mm.</param>
public sealed record Circle(Point Middle, double Radius) : Shape;
