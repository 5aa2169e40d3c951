namespace Advance.Handbook;

/// <summary>
/// What each foot of a stiff thing carries, any number of them, all alike and on ground that gives alike: a rigid plate on equal springs,
/// <c>R = W · (1 / n + e · S⁻¹ · r)</c>, S the second moments of the feet about their middle. A foot cannot pull: one that would is lifted, and the
/// others carry it. Source: <see cref="RigidBodies.Balance"/>; it is the sum of a group of bolts, or piles, under an eccentric load.
/// </summary>
public static class FootLoads
{
    private const double Hair = 1e-9;

    /// <summary>
    /// The share of a weight that comes to each foot; 0 for one that is lifted, and all together 1. Null where the load lies outside the feet, so that it tips.
    /// </summary>
    /// <param name="feet">Where they are, m; three or more that are not in one line.</param>
    /// <param name="x">Where the load acts, m, from what the feet are measured from.</param>
    /// <param name="y">The same, the other way.</param>
    public static IReadOnlyList<double>? Shares(IReadOnlyList<(double X, double Y)> feet, double x, double y)
    {
        var standing = Enumerable.Range(0, feet.Count).ToList();
        while (true)
        {
            var shares = On([.. standing.Select(foot => feet[foot])], x, y);
            if (shares is null)
            {
                return null;
            }

            var lifted = Enumerable.Range(0, shares.Count).Where(index => shares[index] < -Hair).ToList();
            if (lifted.Count == 0)
            {
                var all = new double[feet.Count];
                for (var index = 0; index < standing.Count; index++)
                {
                    all[standing[index]] = Math.Max(0, shares[index]);
                }

                return all;
            }

            standing.RemoveAt(lifted.MinBy(index => shares[index]));
        }
    }

    // All of them on the ground; null where they do not hold it. Two, or some in one line, hold what lies on that line.
    private static List<double>? On(IReadOnlyList<(double X, double Y)> feet, double x, double y)
    {
        if (feet.Count == 0)
        {
            return null;
        }

        var (middleX, middleY) = (feet.Average(foot => foot.X), feet.Average(foot => foot.Y));
        var (offX, offY) = (x - middleX, y - middleY);
        var xx = feet.Sum(foot => (foot.X - middleX) * (foot.X - middleX));
        var yy = feet.Sum(foot => (foot.Y - middleY) * (foot.Y - middleY));
        var xy = feet.Sum(foot => (foot.X - middleX) * (foot.Y - middleY));
        var determinant = (xx * yy) - (xy * xy);
        if (determinant <= Hair * (xx + yy) * (xx + yy))
        {
            var line = xx + yy;
            var isOff = line <= Hair ? Math.Abs(offX) + Math.Abs(offY) > Hair : Math.Abs((xx >= yy ? offY * xx : offX * yy) - (xy * (xx >= yy ? offX : offY))) > Hair * line;
            return isOff ? null : [.. feet.Select(foot => (1.0 / feet.Count) + (line <= Hair ? 0 : ((offX * (foot.X - middleX)) + (offY * (foot.Y - middleY))) / line))];
        }

        var (a, b) = (((yy * offX) - (xy * offY)) / determinant, ((xx * offY) - (xy * offX)) / determinant);
        return [.. feet.Select(foot => (1.0 / feet.Count) + (a * (foot.X - middleX)) + (b * (foot.Y - middleY)))];
    }
}
