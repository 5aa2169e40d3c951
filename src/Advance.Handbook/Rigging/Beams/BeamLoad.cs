namespace Advance.Handbook;

/// <summary>
/// What a beam carries: a force at a point, a force spread evenly over a length, or a couple. Made by <see cref="Point"/>, <see cref="Uniform"/> and
/// <see cref="Turning"/>.
/// </summary>
public sealed record BeamLoad
{
    private BeamLoad(double from, double to, double force, double couple)
    {
        From = from;
        To = to;
        Force = force;
        Couple = couple;
    }

    /// <summary>Where it starts, m from the beam's left end.</summary>
    public double From { get; }

    /// <summary>Where it ends, m; the same for a point load and a couple.</summary>
    public double To { get; }

    /// <summary>All of it, N, downward positive.</summary>
    public double Force { get; }

    /// <summary>Couple, N m, clockwise positive; 0 for forces.</summary>
    public double Couple { get; }

    /// <summary>Whether it is spread over a length.</summary>
    public bool IsSpread => To > From;

    /// <summary>Per metre, N/m; 0 for what is not spread.</summary>
    public double PerMetre => IsSpread ? Force / (To - From) : 0;

    /// <summary>Where a spread force may be put together, m.</summary>
    public double Centre => (From + To) / 2;

    /// <summary>A force at a point.</summary>
    /// <param name="at">m from the left end.</param>
    /// <param name="force">N, downward positive.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static BeamLoad Point(double at, double force) => new(Finite(at), at, Finite(force), 0);

    /// <summary>A force spread evenly.</summary>
    /// <param name="from">m from the left end.</param>
    /// <param name="to">m, beyond where it starts.</param>
    /// <param name="perMetre">N/m, downward positive.</param>
    /// <exception cref="ArgumentOutOfRangeException">It has no length, or a number is not finite.</exception>
    public static BeamLoad Uniform(double from, double to, double perMetre)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(Finite(to), Finite(from));
        return new(from, to, Finite(perMetre) * (to - from), 0);
    }

    /// <summary>A couple.</summary>
    /// <param name="at">m from the left end.</param>
    /// <param name="couple">N m, clockwise positive.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static BeamLoad Turning(double at, double couple) => new(Finite(at), at, 0, Finite(couple));

    private static double Finite(double value) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), "A beam's load is a finite number.");
}
