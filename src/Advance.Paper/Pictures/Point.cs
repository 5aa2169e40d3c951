namespace Advance.Paper.Pictures;

/// <summary>A point of a scene.</summary>
/// <param name="X">In mm of the scene, to the right.</param>
/// <param name="Y">In mm of the scene, downwards.</param>
public readonly record struct Point(double X, double Y)
{
    /// <summary>Moved by an offset in mm.</summary>
    public Point Plus(double x, double y) => new(X + x, Y + y);
}
