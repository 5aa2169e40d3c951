namespace Advance.Handbook;

/// <summary>A place in the room of an apex or an anchor, m; z is up.</summary>
/// <param name="X">m.</param>
/// <param name="Y">m.</param>
/// <param name="Z">m, upward.</param>
public readonly record struct RiggingPoint(double X, double Y, double Z)
{
    /// <summary>Distance from the origin, m.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>From one to another.</summary>
    public static RiggingPoint operator -(RiggingPoint left, RiggingPoint right) => new(left.X - right.X, left.Y - right.Y, left.Z - right.Z);

    /// <summary>Both together.</summary>
    public static RiggingPoint operator +(RiggingPoint left, RiggingPoint right) => new(left.X + right.X, left.Y + right.Y, left.Z + right.Z);

    /// <summary>So many times as far.</summary>
    public static RiggingPoint operator *(double times, RiggingPoint point) => new(times * point.X, times * point.Y, times * point.Z);

    /// <summary>See the operator.</summary>
    public static RiggingPoint Subtract(RiggingPoint left, RiggingPoint right) => left - right;

    /// <summary>See the operator.</summary>
    public static RiggingPoint Add(RiggingPoint left, RiggingPoint right) => left + right;

    /// <summary>See the operator.</summary>
    public static RiggingPoint Multiply(double times, RiggingPoint point) => times * point;

    /// <summary>Scalar product, m².</summary>
    public double Dot(RiggingPoint other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>Vector product, m².</summary>
    public RiggingPoint Cross(RiggingPoint other) =>
        new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));
}
