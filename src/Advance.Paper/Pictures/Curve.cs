namespace Advance.Paper.Pictures;

/// <summary>A cubic curve.</summary>
/// <param name="From">One end.</param>
/// <param name="First">What the curve leaves towards.</param>
/// <param name="Second">What the curve comes in from.</param>
/// <param name="To">The other end.</param>
public sealed record Curve(Point From, Point First, Point Second, Point To) : Shape;
