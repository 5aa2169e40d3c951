using Advance.Handbook;

namespace Advance.Planning;

/// <summary>
/// Moves one hook up or down until something reaches its capacity. As long as no chain goes slack or is taken up all forces change in straight lines,
/// so the next change of chains is known exactly; and between two changes the largest use is convex, so that it passes 1 once at most and halving finds it.
/// </summary>
internal sealed class ToleranceSearch
{
    private const double Nudge = 1e-7;
    private const double Fine = 1e-5;
    private readonly HungBeam hung;
    private readonly LiftCapacities capacities;
    private readonly PullOnly chains;
    private readonly bool isSoft;
    private readonly PullOnlySolution level;

    /// <summary>Over a truss whose centre of gravity lies between its outermost hoists, two or more.</summary>
    public ToleranceSearch(HungBeam hung, LiftCapacities capacities, bool isSoft)
    {
        (this.hung, this.capacities, this.isSoft) = (hung, capacities, isSoft);
        chains = new PullOnly(hung, isSoft);
        level = chains.Solve(new double[hung.Hoists.Count])!;
    }

    /// <summary>How far, m, to a hundredth of a millimetre and never more than true; null where nothing reaches its capacity.</summary>
    /// <param name="hoist">From 0.</param>
    /// <param name="sign">1 for up, −1 for down.</param>
    public (double? By, LiftUse? Use) Find(int hoist, int sign)
    {
        var from = 0.0;
        for (var change = 0; change < 20 * hung.Hoists.Count && from < hung.Length; change++)
        {
            var stretch = new ToleranceStretch(chains, chains.Solve(Offsets(hoist, sign * from), null, level.Levels)!, Offsets(hoist, sign * from), hoist, sign);
            if (Use(stretch, 0, hoist, sign * from) is { Share: >= 1 } reached)
            {
                return (from, reached);
            }

            var length = Math.Min(stretch.Length, hung.Length - from);
            if (Use(stretch, length, hoist, sign * (from + length)) is { Share: >= 1 })
            {
                var by = Crossing(stretch, length);
                return (from + by, Use(stretch, by + Fine, hoist, sign * (from + by)));
            }

            from += length + Nudge;
        }

        return (null, null);
    }

    private double Crossing(ToleranceStretch stretch, double length)
    {
        var (under, over) = (0.0, length);
        while (over - under > Fine)
        {
            var middle = (under + over) / 2;
            (under, over) = Share(stretch, middle) >= 1 ? (under, middle) : (middle, over);
        }

        return under;
    }

    private double Share(ToleranceStretch stretch, double by) => Use(stretch, by, 0, 0)?.Share ?? 0;

    private LiftUse? Use(ToleranceStretch stretch, double by, int hoist, double offset)
    {
        var levels = stretch.LevelsAt(by);
        return capacities.UseOf(LiftCase.Of(Offsets(hoist, offset), isSoft), levels, new BeamDiagram(hung.Continuous.Layout, levels));
    }

    private double[] Offsets(int hoist, double offset)
    {
        var offsets = new double[hung.Hoists.Count];
        offsets[hoist] = offset;
        return offsets;
    }
}
