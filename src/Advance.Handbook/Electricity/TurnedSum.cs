using System.Numerics;

namespace Advance.Handbook;

/// <summary>
/// The largest sum of phasors some of which may turn within limits: <c>|Σ| = |F| + A</c>. Exact: at the largest sum each of them lies either
/// along the sum, or at the limit that is nearest to it. Source: <see cref="CircuitTheory.Phasors"/>.
/// </summary>
/// <param name="Fixed">What is known, with those that stand at a limit.</param>
/// <param name="Aligned">Lengths of those that lie along the sum.</param>
/// <param name="Direction">Of the sum, radian.</param>
public readonly record struct TurnedSum(Complex Fixed, double Aligned, double Direction)
{
    private const double Slack = 1e-9;

    // Of two as long as each other the first is taken, and rounding does not choose between them.
    private const double Tie = 1e-12;

    /// <summary>How long it is.</summary>
    public double Length => Complex.Abs(Fixed) + Aligned;

    /// <summary>Finds it.</summary>
    /// <param name="known">The sum of all whose direction is known.</param>
    /// <param name="turning">The others.</param>
    public static TurnedSum Of(Complex known, IEnumerable<TurningPhasor> turning)
    {
        var groups = turning.GroupBy(one => (one.Middle, one.Within)).Select(group => new TurningPhasor(group.Sum(one => one.Length), group.Key.Middle, group.Key.Within)).ToList();
        var edges = groups.Where(group => group.Within < Math.PI)
            .SelectMany(group => new[] { group.Middle - group.Within, group.Middle + group.Within, group.Middle + Math.PI })
            .Select(Turn).Distinct().Order().ToList();
        if (edges.Count == 0)
        {
            return At(known, groups, known.Phase);
        }

        var best = default(TurnedSum);
        for (var index = 0; index < edges.Count; index++)
        {
            var (from, to) = (edges[index], index + 1 < edges.Count ? edges[index + 1] : edges[0] + (2 * Math.PI));
            var sum = At(known, groups, (from + to) / 2);
            best = IsInside(sum, from, to) && sum.Length > best.Length * (1 + Tie) ? sum : best;
        }

        return best;
    }

    /// <summary>
    /// Where a phasor stands for a sum of some direction: null along it, else the limit that is nearest to it, as an angle from its middle.
    /// </summary>
    public static double? LimitOf(TurningPhasor one, double direction) =>
        Turn(direction - one.Middle) is var off && Math.Abs(off) <= one.Within ? null : off > 0 ? one.Within : -one.Within;

    private static TurnedSum At(Complex known, List<TurningPhasor> groups, double direction)
    {
        var (sum, aligned) = (known, 0.0);
        foreach (var group in groups)
        {
            if (LimitOf(group, direction) is { } limit)
            {
                sum += Complex.FromPolarCoordinates(group.Length, group.Middle + limit);
            }
            else
            {
                aligned += group.Length;
            }
        }

        return new TurnedSum(sum, aligned, direction);
    }

    // Between two edges no phasor changes its limit, so the sum there is one only where it points between them.
    private static bool IsInside(TurnedSum sum, double from, double to)
    {
        if (Complex.Abs(sum.Fixed) < Slack)
        {
            return true;
        }

        var turned = sum.Fixed.Phase - from;
        turned -= 2 * Math.PI * Math.Floor((turned + Slack) / (2 * Math.PI));
        return turned <= to - from + Slack;
    }

    // Between minus and plus half a turn.
    private static double Turn(double angle) => angle - (2 * Math.PI * Math.Round(angle / (2 * Math.PI), MidpointRounding.AwayFromZero));
}
