namespace Advance.Handbook;

/// <summary>A straight beam of one section and what it carries, its own weight among it.</summary>
public sealed record Beam
{
    /// <summary>Makes a beam.</summary>
    /// <param name="length">m, more than 0.</param>
    /// <param name="bending">Bending stiffness EI, N m², more than 0.</param>
    /// <param name="shear">Shear stiffness GA, N, more than 0; null where shear does not bend it visibly.</param>
    /// <param name="loads">All within its length.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public Beam(double length, double bending, double? shear, IReadOnlyList<BeamLoad> loads)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bending);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(shear ?? 1);
        var over = loads.FirstOrDefault(load => load.From < 0 || load.To > length * (1 + 1e-12));
        if (over is not null)
        {
            throw new ArgumentOutOfRangeException(nameof(loads), "A load lies beyond the end of the beam.");
        }

        Length = length;
        Bending = bending;
        Shear = shear;
        Loads = loads;
    }

    /// <summary>m.</summary>
    public double Length { get; }

    /// <summary>EI, N m².</summary>
    public double Bending { get; }

    /// <summary>GA, N; null for a beam that does not give in shear.</summary>
    public double? Shear { get; }

    /// <summary>What it carries.</summary>
    public IReadOnlyList<BeamLoad> Loads { get; }

    /// <summary>How much one newton of shear tilts it, 1/N.</summary>
    public double ShearFlexibility => Shear is { } stiffness ? 1 / stiffness : 0;

    /// <summary>Sum of all loads, N.</summary>
    public double Weight => Loads.Sum(load => load.Force);

    /// <summary>Moment of all loads about the left end, N m, clockwise positive.</summary>
    public double MomentAboutStart => Loads.Sum(load => (load.Force * load.Centre) + load.Couple);
}
