namespace Advance.Paper.Pictures;

/// <summary>A straight line.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
public sealed record Line(Point From, Point To) : Shape;
