namespace Advance.Handbook;

/// <summary>
/// A beam on any number of supports, by the stiffness method: unknown are height and turn at each support, loads between supports enter exactly,
/// so that only the distances between supports decide how well the sums are conditioned. Source: <see cref="Statics.ShearFlexibleBeam"/>.
/// </summary>
public sealed class ContinuousBeam
{
    private readonly BeamElement[] elements;
    private readonly double[] ends;

    /// <summary>A beam and where supports may stand; what each of them holds is told when solving.</summary>
    /// <param name="beam">The beam and its loads.</param>
    /// <param name="at">Places of the supports, m from the left end, rising.</param>
    /// <exception cref="ArgumentException">There is none, they do not rise, or one lies beyond an end.</exception>
    public ContinuousBeam(Beam beam, IReadOnlyList<double> at)
    {
        Check(beam, at);
        Beam = beam;
        At = [.. at];
        Layout = new BeamLayout(beam, At);
        elements = [.. Enumerable.Range(0, at.Count - 1).Select(index => new BeamElement(beam, at[index], at[index + 1]))];
        ends = EndForces(beam, At);
    }

    /// <summary>The beam and its loads.</summary>
    public Beam Beam { get; }

    /// <summary>Where supports stand, m, rising.</summary>
    public IReadOnlyList<double> At { get; }

    /// <summary>Where something happens along it.</summary>
    public BeamLayout Layout { get; }

    /// <summary>A beam on supports, solved.</summary>
    /// <param name="beam">The beam and its loads.</param>
    /// <param name="supports">In any order, no two in one place.</param>
    /// <exception cref="ArgumentException">The supports do not hold it, or two stand in one place.</exception>
    public static BeamSolution Solve(Beam beam, params IReadOnlyList<BeamSupport> supports)
    {
        var rising = supports.OrderBy(support => support.At).ToList();
        return new ContinuousBeam(beam, [.. rising.Select(support => support.At)]).SolveOn(rising);
    }

    /// <summary>Solved for what each support holds.</summary>
    /// <param name="supports">One for each place, in their order.</param>
    /// <exception cref="ArgumentException">They do not hold it: fewer than two hold it up, and none is clamped.</exception>
    public BeamSolution SolveOn(IReadOnlyList<BeamSupport> supports)
    {
        if (supports.Count != At.Count || !IsHeld(supports))
        {
            throw new ArgumentException("These supports do not hold the beam.", nameof(supports));
        }

        var state = StateOn(supports);
        return new BeamSolution(this, supports, state, ForcesIn(state));
    }

    private static bool IsHeld(IReadOnlyList<BeamSupport> supports) => supports.Count(support => support.Holds) switch
    {
        0 => false,
        1 => supports.Any(support => support.IsClamped),
        _ => true,
    };

    private static void Check(Beam beam, IReadOnlyList<double> at)
    {
        if (at.Count == 0 || at[0] < 0 || at[^1] > beam.Length * (1 + 1e-12))
        {
            throw new ArgumentException("Supports stand within the length of the beam.", nameof(at));
        }

        for (var index = 1; index < at.Count; index++)
        {
            if (!(at[index] - at[index - 1] > 1e-6 * beam.Length))
            {
                throw new ArgumentException("Supports stand apart and rise along the beam.", nameof(at));
            }
        }
    }

    // What hangs beyond the outermost supports pulls at them and turns them.
    private static double[] EndForces(Beam beam, IReadOnlyList<double> at)
    {
        var forces = new double[2 * at.Count];
        foreach (var load in beam.Loads)
        {
            Overhang(load, Math.Min(load.From, at[0]), Math.Min(load.To, at[0]), load.From < at[0], at[0], 0, forces);
            Overhang(load, Math.Max(load.From, at[^1]), Math.Max(load.To, at[^1]), load.From >= at[^1], at[^1], forces.Length - 2, forces);
        }

        return forces;
    }

    private static void Overhang(BeamLoad load, double from, double to, bool isBeyond, double support, int row, double[] forces)
    {
        var force = load.IsSpread ? load.PerMetre * (to - from) : isBeyond ? load.Force : 0;
        forces[row] -= force;
        forces[row + 1] -= (force * (((from + to) / 2) - support)) + (isBeyond ? load.Couple : 0);
    }

    private double[] StateOn(IReadOnlyList<BeamSupport> supports)
    {
        var matrix = new BandedMatrix(2 * At.Count);
        var right = (double[])ends.Clone();
        for (var index = 0; index < elements.Length; index++)
        {
            elements[index].AddTo(matrix, right, 2 * index);
        }

        for (var index = 0; index < At.Count; index++)
        {
            Hold(matrix, right, supports[index], 2 * index);
        }

        matrix.Solve(right);
        return right;
    }

    private static void Hold(BandedMatrix matrix, double[] right, BeamSupport support, int row)
    {
        if (support.Stiffness is not { } spring)
        {
            matrix.Fix(row, support.Offset, right);
        }
        else
        {
            matrix.Add(row, row, spring);
            right[row] += spring * support.Offset;
        }

        if (support.IsClamped)
        {
            matrix.Fix(row + 1, 0, right);
        }
    }

    private double[] ForcesIn(double[] state)
    {
        var forces = new double[state.Length];
        for (var index = 0; index < elements.Length; index++)
        {
            elements[index].AddForces(forces, state, 2 * index);
        }

        for (var row = 0; row < forces.Length; row++)
        {
            forces[row] -= ends[row];
        }

        return forces;
    }
}
