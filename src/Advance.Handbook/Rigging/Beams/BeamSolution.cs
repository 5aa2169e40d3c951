namespace Advance.Handbook;

/// <summary>A beam on its supports, solved. Forces and moments along it come from the reactions by statics alone.</summary>
public sealed class BeamSolution
{
    private readonly ContinuousBeam beam;
    private readonly double[] heights;
    private readonly double[] turns;
    private BeamDiagram? diagram;
    private BeamCurve? curve;

    internal BeamSolution(ContinuousBeam beam, IReadOnlyList<BeamSupport> supports, double[] state, double[] forces)
    {
        this.beam = beam;
        var count = supports.Count;
        var (reactions, couples) = (new double[count], new double[count]);
        (heights, turns) = (new double[count], new double[count]);
        for (var index = 0; index < count; index++)
        {
            (heights[index], turns[index]) = (state[2 * index], state[(2 * index) + 1]);
            reactions[index] = supports[index].Holds ? forces[2 * index] : 0;
            couples[index] = supports[index].IsClamped ? -forces[(2 * index) + 1] : 0;
        }

        (Reactions, Couples) = (reactions, couples);
    }

    /// <summary>What each support gives, N, upward positive, in the order of their places.</summary>
    public IReadOnlyList<double> Reactions { get; }

    /// <summary>What each clamped support gives, N m, clockwise positive; 0 elsewhere.</summary>
    public IReadOnlyList<double> Couples { get; }

    /// <summary>How high the beam lies at each support, m.</summary>
    public IReadOnlyList<double> Heights => heights;

    /// <summary>Shear and moment along it.</summary>
    public BeamDiagram Diagram => diagram ??= new BeamDiagram(beam.Layout, Reactions, Couples);

    /// <summary>How high the beam lies at a place, m; negative where it sags below the straight line.</summary>
    /// <param name="at">m from the left end.</param>
    public double HeightAt(double at) => Curve.HeightAt(at);

    /// <summary>Where it lies lowest against the straight line, and how low, m.</summary>
    public BeamExtreme Lowest => Curve.Lowest;

    /// <summary>What is left of the sum of all forces, N: 0 but for rounding.</summary>
    public double ForceLeft => Reactions.Sum() - beam.Beam.Weight;

    /// <summary>What is left of all moments about the left end, N m: 0 but for rounding.</summary>
    public double MomentLeft => Reactions.Select((force, index) => force * beam.At[index]).Sum() - Couples.Sum() - beam.Beam.MomentAboutStart;

    // Worked out when asked for: a lift is solved hundreds of times for its reactions alone.
    private BeamCurve Curve => curve ??= new BeamCurve(beam.Beam, Diagram, beam.At, heights, turns);
}
