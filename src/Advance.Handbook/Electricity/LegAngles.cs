using System.Numerics;

namespace Advance.Handbook;

/// <summary>The angles at which the voltages of a supply's legs stand to its neutral, in degrees; legs are counted from 0.</summary>
public sealed class LegAngles
{
    /// <summary>One leg and neutral.</summary>
    public static readonly LegAngles Single = new(0);

    /// <summary>Three legs of a wye, in the order of rotation L1, L2, L3.</summary>
    public static readonly LegAngles ThreePhase = new(0, -120, 120);

    /// <summary>Two halves of a centre-tapped winding: 120/240 V.</summary>
    public static readonly LegAngles SplitPhase = new(0, 180);

    /// <summary>Two legs of a wye with its neutral: 120/208 V.</summary>
    public static readonly LegAngles TwoOfWye = new(0, -120);

    private LegAngles(params double[] degrees) => Degrees = degrees;

    /// <summary>The angle of each leg.</summary>
    public IReadOnlyList<double> Degrees { get; }

    /// <summary>How many legs.</summary>
    public int Count => Degrees.Count;

    /// <summary>The direction of a leg's voltage to neutral; for a harmonic of order n the angle counts n times.</summary>
    /// <param name="leg">From 0.</param>
    /// <param name="order">1 for the fundamental.</param>
    public Complex ToNeutral(int leg, int order = 1) => Direction(order * Degrees[leg]);

    /// <summary>The direction of the voltage between two legs; for a harmonic of order n the angle counts n times.</summary>
    /// <param name="from">From 0.</param>
    /// <param name="to">Another leg.</param>
    /// <param name="order">1 for the fundamental.</param>
    /// <exception cref="ArgumentException">Both are the same leg.</exception>
    public Complex Between(int from, int to, int order = 1)
    {
        if (from == to)
        {
            throw new ArgumentException("A load between two legs needs two of them.", nameof(to));
        }

        var difference = ToNeutral(from) - ToNeutral(to);
        return Direction(order * difference.Phase * 180 / Math.PI);
    }

    private static Complex Direction(double degrees) => Complex.FromPolarCoordinates(1, degrees * Math.PI / 180);
}
