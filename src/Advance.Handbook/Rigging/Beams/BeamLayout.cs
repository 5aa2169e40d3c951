namespace Advance.Handbook;

/// <summary>
/// The places along a beam where something happens (an end, a support, a load that starts, ends or stands there), and what happens there. Between
/// two of them the spread load is even, so shear is a straight line and moment a parabola.
/// </summary>
public sealed class BeamLayout
{
    private readonly double[] at;

    /// <summary>Of a beam with supports, and with more places where values are wanted.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="supports">Places of supports, m.</param>
    /// <param name="more">More places, m, within its length.</param>
    public BeamLayout(Beam beam, IReadOnlyList<double> supports, params IReadOnlyList<double> more)
    {
        at = [.. supports.Concat(more).Append(0).Append(beam.Length).Concat(beam.Loads.SelectMany(load => new[] { load.From, load.To }))
            .Select(place => Math.Clamp(place, 0, beam.Length)).Distinct().Order()];
        Forces = new double[at.Length];
        Couples = new double[at.Length];
        PerMetre = new double[at.Length];
        Supports = [.. supports.Select(IndexOf)];
        foreach (var load in beam.Loads)
        {
            Put(load, beam.Length);
        }
    }

    /// <summary>The places, m, rising, from 0 to the beam's length.</summary>
    public IReadOnlyList<double> At => at;

    /// <summary>The places as an array, which is read hundreds of times for each lift.</summary>
    internal double[] Places => at;

    /// <summary>Which place each support is.</summary>
    internal int[] Supports { get; }

    /// <summary>Downward point load at each place, N.</summary>
    internal double[] Forces { get; }

    /// <summary>Clockwise couple at each place, N m.</summary>
    internal double[] Couples { get; }

    /// <summary>Downward spread load from each place to the next, N/m.</summary>
    internal double[] PerMetre { get; }

    /// <summary>The largest point load, all at one place together, N.</summary>
    public BeamExtreme LargestPointLoad
    {
        get
        {
            var index = Array.IndexOf(Forces, Forces.Max());
            return new(Forces[index], at[index]);
        }
    }

    /// <summary>Downward spread load from a place to the next, N/m; 0 behind the last.</summary>
    /// <param name="index">Which place, from 0.</param>
    public double SpreadFrom(int index) => PerMetre[index];

    /// <summary>The last place at or before one.</summary>
    internal int Before(double place)
    {
        var found = Array.BinarySearch(at, place);
        return found >= 0 ? found : Math.Max(0, ~found - 1);
    }

    private int IndexOf(double place) => Array.BinarySearch(at, Math.Min(place, at[^1]));

    private void Put(BeamLoad load, double length)
    {
        var first = IndexOf(load.From);
        Forces[first] += load.IsSpread ? 0 : load.Force;
        Couples[first] += load.Couple;
        for (var index = first; load.IsSpread && index < IndexOf(Math.Min(load.To, length)); index++)
        {
            PerMetre[index] += load.PerMetre;
        }
    }
}
