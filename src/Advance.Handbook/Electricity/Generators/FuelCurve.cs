using UnitsNet;

namespace Advance.Handbook;

/// <summary>What a generating set burns at a load, between the points that its maker gives.</summary>
public sealed class FuelCurve
{
    // A load that is a point's but for the last bits of a sum.
    private const double Hair = 1e-9;

    private readonly (Ratio Load, VolumeFlow Burns)[] points;

    /// <summary>Makes one.</summary>
    /// <param name="points">Share of the rated power, 0 to 1, and what it burns there; in any order.</param>
    /// <exception cref="ArgumentException">There is no point, or one load has two.</exception>
    public FuelCurve(IEnumerable<(Ratio Load, VolumeFlow Burns)> points)
    {
        this.points = [.. points.OrderBy(point => point.Load)];
        if (this.points.Length == 0 || this.points.Zip(this.points.Skip(1)).Any(pair => pair.First.Load >= pair.Second.Load))
        {
            throw new ArgumentException("A fuel curve has one point or more, each at a load of its own.", nameof(points));
        }
    }

    /// <summary>
    /// The two points beside a load, for a working; both are the first below it, and both are the one that it stands at. Null above the last,
    /// where nobody knows.
    /// </summary>
    /// <param name="load">Share of the rated power, 0 or more.</param>
    public ((Ratio Load, VolumeFlow Burns) Low, (Ratio Load, VolumeFlow Burns) High)? Around(Ratio load)
    {
        var next = Array.FindIndex(points, point => point.Load.DecimalFractions >= load.DecimalFractions * (1 - Hair));
        return next < 0 ? null : (points[next == 0 || points[next].Load <= load ? next : next - 1], points[next]);
    }

    /// <summary>
    /// At a load, on the straight line between the points beside it: <c>q = a + (b - a) · (p - m) / (n - m)</c>; below the first as much as there,
    /// which is rather too much; null above the last.
    /// </summary>
    /// <param name="load">Share of the rated power, 0 or more.</param>
    public VolumeFlow? At(Ratio load) => Around(load) is not var (low, high) ? null
        : low.Load >= high.Load ? high.Burns
        : low.Burns + ((high.Burns - low.Burns) * ((load - low.Load) / (high.Load - low.Load)));
}
