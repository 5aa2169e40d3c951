using Advance.Handbook;

namespace Advance.Planning;

/// <summary>
/// A truss on chains, which pull and never push. Of all ways to share the load without a push, the one with the least strain energy is the true one:
/// starting from a way that balances, chains that would push are dropped at the moment they go slack, and a slack one is taken up where the truss
/// would hang lower than its hook. The energy falls with each step, so the steps end.
/// </summary>
internal sealed class PullOnly
{
    // With more hooks than these no patterns are tried, and a solve for each hook of a set would not pay.
    private const int MostKept = 8;
    private readonly Dictionary<int, ChainSet> kept = [];
    private readonly HungBeam hung;
    private readonly double?[] stiffness;
    private readonly double hair;

    /// <summary>A truss with chains that give, or do not.</summary>
    public PullOnly(HungBeam hung, bool isSoft)
    {
        this.hung = hung;
        stiffness = [.. hung.Hoists.Select(hoist => isSoft ? hoist.Stiffness : null)];
        hair = 1e-10 * hung.Weight;
    }

    /// <summary>Solved; null where the centre of gravity lies beyond the hoists that are there, or only one is there and it is not above it.</summary>
    /// <param name="offsets">How much higher each hook stands than level, m.</param>
    /// <param name="gone">A hoist that is gone, from 0.</param>
    /// <param name="start">A way to share the load that balances, to start from; null to start from two hoists.</param>
    public PullOnlySolution? Solve(double[] offsets, int? gone = null, IReadOnlyList<double>? start = null)
    {
        var first = start is null || gone is not null ? Start(gone) : [.. start];
        if (first is null)
        {
            return null;
        }

        return Sole(first, gone) ?? Settle(first, offsets, gone);
    }

    /// <summary>With a set of chains taken as supports that push and pull.</summary>
    /// <param name="set">Which chains hold.</param>
    /// <param name="offsets">How much higher each hook stands than level, m.</param>
    public BeamSolution SolveOn(IReadOnlyList<bool> set, double[] offsets)
    {
        var supports = new BeamSupport[set.Count];
        for (var hoist = 0; hoist < supports.Length; hoist++)
        {
            supports[hoist] = new(hung.Hoists[hoist].At) { Stiffness = set[hoist] ? stiffness[hoist] : 0, Offset = offsets[hoist] };
        }

        return hung.Continuous.SolveOn(supports);
    }

    // The two that are there and nearest to the centre of gravity on either side carry all.
    private double[]? Start(int? gone)
    {
        var there = Enumerable.Range(0, stiffness.Length).Where(hoist => hoist != gone).ToList();
        if (there.Count == 0 || !hung.Holds(hung.Hoists[there[0]].At, hung.Hoists[there[^1]].At))
        {
            return null;
        }

        var levels = new double[stiffness.Length];
        var right = there.FindIndex(1 % there.Count, hoist => hung.Hoists[hoist].At >= hung.Centre);
        var second = there[right < 0 ? ^1 : right];
        var first = there.LastOrDefault(hoist => hoist < second, second);
        var share = first == second ? 1 : (hung.Centre - hung.Hoists[first].At) / (hung.Hoists[second].At - hung.Hoists[first].At);
        levels[first] = hung.Weight * Math.Clamp(1 - share, 0, 1);
        levels[second] = hung.Weight * Math.Clamp(share, 0, 1);
        return levels;
    }

    private PullOnlySolution? Sole(double[] levels, int? gone) =>
        stiffness.Length - (gone is null ? 0 : 1) == 1 ? new(levels, null, [.. levels.Select(level => level > 0)]) : null;

    private PullOnlySolution Settle(double[] levels, double[] offsets, int? gone)
    {
        var set = SetOf(levels, gone);
        for (var step = 0; step < 100 * (stiffness.Length + 1); step++)
        {
            var (to, heights) = Answer(set, offsets);
            if (Blocking(levels, to, set) is { } blocked)
            {
                Move(levels, to, blocked.Share);
                (levels[blocked.Hoist], set[blocked.Hoist]) = (0, false);
            }
            else if (Stretched(heights, set, offsets, gone, isByOrder: step > 10 * stiffness.Length) is { } taken)
            {
                Move(levels, to, 1);
                set[taken] = true;
            }
            else
            {
                return Checked(to, heights, set);
            }
        }

        throw new InvalidOperationException("The chains of a truss did not settle.");
    }

    // Two chains at least: where all hangs on one, its neighbour is there too and carries nothing.
    private bool[] SetOf(double[] levels, int? gone)
    {
        bool[] set = [.. levels.Select(level => level > hair)];
        for (var hoist = 0; set.Count(one => one) < 2; hoist++)
        {
            set[hoist] |= hoist != gone;
        }

        return set;
    }

    private (int Hoist, double Share)? Blocking(double[] from, double[] to, bool[] set)
    {
        (int Hoist, double Share)? first = null;
        for (var hoist = 0; hoist < set.Length; hoist++)
        {
            if (set[hoist] && to[hoist] < -hair)
            {
                var share = from[hoist] / (from[hoist] - to[hoist]);
                first = first is { } earlier && earlier.Share <= share ? first : (hoist, share);
            }
        }

        return first;
    }

    private static void Move(double[] levels, double[] to, double share)
    {
        for (var hoist = 0; hoist < levels.Length; hoist++)
        {
            levels[hoist] = Math.Max(0, levels[hoist] + (share * (to[hoist] - levels[hoist])));
        }
    }

    // The slack chain that the truss hangs furthest below, or where steps grow many the first, which cannot go round in circles.
    private static int? Stretched(double[] heights, bool[] set, double[] offsets, int? gone, bool isByOrder)
    {
        var most = 1e-10 * Scale(heights, offsets);
        int? found = null;
        for (var hoist = 0; hoist < set.Length; hoist++)
        {
            var stretch = offsets[hoist] - heights[hoist];
            if (!set[hoist] && hoist != gone && stretch > most)
            {
                (found, most) = (hoist, stretch);
                if (isByOrder)
                {
                    break;
                }
            }
        }

        return found;
    }

    private static double Scale(double[] heights, double[] offsets)
    {
        var most = 0.0;
        for (var hoist = 0; hoist < heights.Length; hoist++)
        {
            most = Math.Max(most, Math.Abs(heights[hoist]) + Math.Abs(offsets[hoist]));
        }

        return most;
    }

    private PullOnlySolution Checked(double[] levels, double[] heights, bool[] set)
    {
        var (force, moment) = (0.0, 0.0);
        for (var hoist = 0; hoist < levels.Length; hoist++)
        {
            levels[hoist] = Math.Max(0, levels[hoist]);
            force += levels[hoist];
            moment += levels[hoist] * (hung.Hoists[hoist].At - hung.Centre);
        }

        return Math.Abs(force - hung.Weight) <= 1e-6 * hung.Weight && Math.Abs(moment) <= 1e-6 * hung.Weight * hung.Length
            ? new(levels, heights, set)
            : throw new InvalidOperationException("The chains of a truss do not balance what hangs on it.");
    }

    private (double[] Levels, double[] Heights) Answer(bool[] set, double[] offsets)
    {
        if (set.Length > MostKept)
        {
            var solved = SolveOn(set, offsets);
            return ([.. solved.Reactions], [.. solved.Heights]);
        }

        var key = 0;
        for (var hoist = 0; hoist < set.Length; hoist++)
        {
            key |= set[hoist] ? 1 << hoist : 0;
        }

        if (!kept.TryGetValue(key, out var answers))
        {
            kept[key] = answers = new ChainSet(this, set);
        }

        return answers.At(offsets);
    }
}
