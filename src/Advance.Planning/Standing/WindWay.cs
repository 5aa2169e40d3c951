namespace Advance.Planning;

/// <summary>A way that the wind pushes.</summary>
/// <param name="Name">Where it comes from: <c>front</c>.</param>
/// <param name="X">Towards stage left of what faces the audience; with <see cref="Y"/> of length 1.</param>
/// <param name="Y">Towards its rear.</param>
public readonly record struct WindWay(string Name, double X, double Y)
{
    private const double Half = 0.70710678118654752;

    /// <summary>Onto the four faces.</summary>
    public static readonly IReadOnlyList<WindWay> Straight = [new("the front", 0, 1), new("behind", 0, -1), new("SR", 1, 0), new("SL", -1, 0)];

    /// <summary>Onto the four corners.</summary>
    public static readonly IReadOnlyList<WindWay> Diagonal =
        [new("the front SR corner", Half, Half), new("the front SL corner", -Half, Half), new("the rear SR corner", Half, -Half), new("the rear SL corner", -Half, -Half)];

    /// <summary>Whether it comes onto a corner.</summary>
    public bool IsDiagonal => X != 0 && Y != 0;

    /// <summary>How much of it goes the way of an edge, 0 to 1; negative away from it.</summary>
    public double Along(double x, double y) => (X * x) + (Y * y);
}
