namespace Advance.Paper.Pictures;

/// <summary>A rectangle about its middle.</summary>
/// <param name="Middle">Its middle, about which it is turned.</param>
/// <param name="Width">In mm, before it is turned.</param>
/// <param name="Height">In mm, before it is turned.</param>
/// <param name="Turn">In degrees, clockwise as seen on the paper.</param>
public sealed record Rectangle(Point Middle, double Width, double Height, double Turn = 0) : Shape
{
    /// <summary>Radius of the corners in mm of the paper. Default 0.</summary>
    public double CornerMm { get; init; }
}
