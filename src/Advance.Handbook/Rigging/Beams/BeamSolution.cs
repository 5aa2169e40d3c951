namespace Advance.Handbook;

/// <summary>A beam on its supports, solved. Forces and moments along it come from the reactions by statics alone.</summary>
public sealed class BeamSolution
{
    private readonly ContinuousBeam beam;
    private readonly double[] heights;
    private readonly double[] turns;
    private readonly Lazy<BeamCurve> curve;

    internal BeamSolution(ContinuousBeam beam, IReadOnlyList<BeamSupport> supports, double[] state, double[] forces)
    {
        this.beam = beam;
        heights = [.. supports.Select((_, index) => state[2 * index])];
        turns = [.. supports.Select((_, index) => state[(2 * index) + 1])];
        Reactions = [.. supports.Select((support, index) => support.Holds ? forces[2 * index] : 0)];
        Couples = [.. supports.Select((support, index) => support.IsClamped ? -forces[(2 * index) + 1] : 0)];
        Diagram = new BeamDiagram(beam.Layout, Reactions, Couples);
        curve = new Lazy<BeamCurve>(() => new BeamCurve(beam.Beam, Diagram, beam.At, heights, turns));
    }

    /// <summary>What each support gives, N, upward positive, in the order of their places.</summary>
    public IReadOnlyList<double> Reactions { get; }

    /// <summary>What each clamped support gives, N m, clockwise positive; 0 elsewhere.</summary>
    public IReadOnlyList<double> Couples { get; }

    /// <summary>How high the beam lies at each support, m.</summary>
    public IReadOnlyList<double> Heights => heights;

    /// <summary>Shear and moment along it.</summary>
    public BeamDiagram Diagram { get; }

    /// <summary>How high the beam lies at a place, m; negative where it sags below the straight line.</summary>
    /// <param name="at">m from the left end.</param>
    public double HeightAt(double at) => curve.Value.HeightAt(at);

    /// <summary>Where it lies lowest against the straight line, and how low, m.</summary>
    public BeamExtreme Lowest => curve.Value.Lowest;

    /// <summary>What is left of the sum of all forces, N: 0 but for rounding.</summary>
    public double ForceLeft => Reactions.Sum() - beam.Beam.Weight;

    /// <summary>What is left of all moments about the left end, N m: 0 but for rounding.</summary>
    public double MomentLeft => Reactions.Select((force, index) => force * beam.At[index]).Sum() - Couples.Sum() - beam.Beam.MomentAboutStart;
}
