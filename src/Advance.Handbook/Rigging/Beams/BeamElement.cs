namespace Advance.Handbook;

/// <summary>
/// The stretch of a beam between two supports, as an element of two nodes that bends and shears: <c>phi = 12 EI / (GA l²)</c>. At each node it
/// rises (v, m, upward) and turns (rad, against the clock). Source: <see cref="Statics.ShearFlexibleBeam"/>.
/// </summary>
internal sealed class BeamElement
{
    private readonly double[] stiffness;
    private readonly double[] held;

    /// <summary>The stretch between two places of a beam.</summary>
    public BeamElement(Beam beam, double from, double to)
    {
        var length = to - from;
        stiffness = StiffnessOf(beam, length);
        held = HeldForces(beam, length, LoadIntegrals.Of(beam.Loads, from, to));
    }

    /// <summary>Adds its stiffness to the whole, and what its loads ask of the nodes.</summary>
    /// <param name="matrix">The whole.</param>
    /// <param name="right">Right-hand side.</param>
    /// <param name="first">Number of its first unknown.</param>
    public void AddTo(BandedMatrix matrix, double[] right, int first)
    {
        for (var row = 0; row < 4; row++)
        {
            right[first + row] -= held[row];
            for (var column = row; column < 4; column++)
            {
                matrix.Add(first + row, first + column, stiffness[(row * 4) + column]);
            }
        }
    }

    /// <summary>Adds what the nodes must give it: force up and couple against the clock at each end, in the state solved.</summary>
    public void AddForces(double[] forces, double[] state, int first)
    {
        for (var row = 0; row < 4; row++)
        {
            var force = held[row];
            for (var column = 0; column < 4; column++)
            {
                force += stiffness[(row * 4) + column] * state[first + column];
            }

            forces[first + row] += force;
        }
    }

    private static double[] StiffnessOf(Beam beam, double length)
    {
        var phi = 12 * beam.Bending * beam.ShearFlexibility / (length * length);
        var unit = beam.Bending / ((1 + phi) * length * length * length);
        var (force, cross, near, far) = (12 * unit, 6 * length * unit, (4 + phi) * length * length * unit, (2 - phi) * length * length * unit);
        return
        [
            force, cross, -force, cross,
            cross, near, -cross, far,
            -force, -cross, force, -cross,
            cross, far, -cross, near,
        ];
    }

    // With both ends clamped: the two unknown forces of the left end follow from no turning and no sinking of the right end against it.
    private static double[] HeldForces(Beam beam, double length, LoadIntegrals loads)
    {
        var soft = beam.Bending * beam.ShearFlexibility;
        var (a, b, r) = (length, length * length / 2, -loads.Turning);
        var (c, d, s) = (length * length / 2, (length * length * length / 6) - (soft * length), -loads.Sinking + (soft * loads.Sliding));
        var determinant = (a * d) - (b * c);
        var moment = ((r * d) - (b * s)) / determinant;
        var shear = ((a * s) - (r * c)) / determinant;
        return [shear, -moment, -(shear + loads.Shear), moment + (shear * length) + loads.Moment];
    }
}
