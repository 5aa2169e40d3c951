namespace Advance.Paper.Pictures;

/// <summary>A dimension line with ticks at its ends and its text beside it.</summary>
/// <param name="From">One end of what is measured.</param>
/// <param name="To">The other end.</param>
/// <param name="Text">As <c>1.76 m</c>.</param>
/// <param name="OffsetMm">How far the line stands off what is measured, in mm of the paper, to the left of the way from one end to the other.</param>
public sealed record Dimension(Point From, Point To, string Text, double OffsetMm = 6) : Shape;
