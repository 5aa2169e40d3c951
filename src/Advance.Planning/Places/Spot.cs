using UnitsNet;

namespace Advance.Planning;

/// <summary>A point on a stage or around it. A value, so that comparing and drawing need no conversions.</summary>
/// <param name="X">To stage left of the centre line, in metres.</param>
/// <param name="Y">Upstage of the downstage edge, in metres.</param>
public readonly record struct Spot(double X, double Y)
{
    /// <summary>A spot from two lengths.</summary>
    public static Spot Of(Length x, Length y) => new(x.Meters, y.Meters);

    /// <summary>A spot so much further to stage left and upstage.</summary>
    public Spot Plus(double x, double y) => new(X + x, Y + y);

    /// <summary>How far away another spot is, in metres.</summary>
    public double To(Spot other) => Math.Sqrt(((other.X - X) * (other.X - X)) + ((other.Y - Y) * (other.Y - Y)));
}
