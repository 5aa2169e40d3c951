namespace Advance.Handbook;

/// <summary>
/// How a beam lies: <c>θ' = M / EI</c>, <c>v' = θ − V / GA</c>, integrated exactly from place to place and laid through its supports.
/// Source: <see cref="Statics.ShearFlexibleBeam"/>.
/// </summary>
internal sealed class BeamCurve
{
    private const int Steps = 16;
    private readonly Beam beam;
    private readonly BeamDiagram diagram;
    private readonly double[] raw;
    private readonly double[] turns;
    private readonly double rise;
    private readonly double slope;

    /// <summary>Through the heights at its supports, or through the one that is clamped.</summary>
    public BeamCurve(Beam beam, BeamDiagram diagram, IReadOnlyList<double> supports, double[] heights, double[] supportTurns)
    {
        this.beam = beam;
        this.diagram = diagram;
        var count = diagram.Layout.At.Count;
        (raw, turns) = (new double[count], new double[count]);
        for (var index = 1; index < count; index++)
        {
            (raw[index], turns[index]) = Along(index - 1, diagram.Layout.At[index] - diagram.Layout.At[index - 1]);
        }

        var (first, last) = (diagram.Layout.Supports[0], diagram.Layout.Supports[^1]);
        slope = first == last
            ? supportTurns[0] - turns[first]
            : (heights[^1] - raw[last] - heights[0] + raw[first]) / (supports[^1] - supports[0]);
        rise = heights[0] - raw[first] - (slope * supports[0]);
    }

    /// <summary>The lowest of the places of the layout and of sixteen between each two of them.</summary>
    public BeamExtreme Lowest
    {
        get
        {
            var lowest = new BeamExtreme(HeightAt(0), 0);
            foreach (var at in Places())
            {
                var height = HeightAt(at);
                lowest = height < lowest.Value - 1e-12 ? new(height, at) : lowest;
            }

            return lowest;
        }
    }

    /// <summary>m, upward.</summary>
    public double HeightAt(double at)
    {
        var index = diagram.Layout.Before(at);
        return Along(index, at - diagram.Layout.At[index]).Height + rise + (slope * at);
    }

    private IEnumerable<double> Places()
    {
        var at = diagram.Layout.At;
        for (var index = 1; index < at.Count; index++)
        {
            for (var step = 1; step <= Steps; step++)
            {
                yield return at[index - 1] + ((at[index] - at[index - 1]) * step / Steps);
            }
        }
    }

    private (double Height, double Turn) Along(int index, double along)
    {
        var (moment, shear, spread) = (diagram.MomentAfter(index), diagram.ShearAfter(index), diagram.Layout.PerMetre[index]);
        var square = along * along;
        var turned = ((moment * along) + (shear * square / 2) - (spread * square * along / 6)) / beam.Bending;
        var bent = ((moment * square / 2) + (shear * square * along / 6) - (spread * square * square / 24)) / beam.Bending;
        var sheared = ((shear * along) - (spread * square / 2)) * beam.ShearFlexibility;
        return (raw[index] + (turns[index] * along) + bent - sheared, turns[index] + turned);
    }
}
