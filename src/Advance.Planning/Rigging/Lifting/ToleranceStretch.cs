namespace Advance.Planning;

/// <summary>As far as one hook moves while the same chains hold: forces and heights change in straight lines.</summary>
internal sealed class ToleranceStretch
{
    private readonly double[] levels;
    private readonly double[] slopes;

    /// <summary>From a state on.</summary>
    /// <param name="chains">Solves it.</param>
    /// <param name="from">The state.</param>
    /// <param name="offsets">How the hooks stand in it, m.</param>
    /// <param name="hoist">The hook that moves.</param>
    /// <param name="sign">1 for up, −1 for down.</param>
    public ToleranceStretch(PullOnly chains, PullOnlySolution from, IReadOnlyList<double> offsets, int hoist, int sign)
    {
        var moved = chains.SolveOn(from.Set, [.. offsets.Select((offset, index) => index == hoist ? offset + sign : offset)]);
        levels = [.. from.Levels];
        slopes = [.. moved.Reactions.Zip(from.Levels, (after, before) => after - before)];
        Length = double.PositiveInfinity;
        var hair = 1e-9 * levels.Sum();
        for (var index = 0; index < levels.Length; index++)
        {
            var slope = moved.Heights[index] - from.Heights![index] - (index == hoist ? sign : 0);
            Shorten(from.Set[index], levels[index], slopes[index], hair);
            Shorten(!from.Set[index], from.Heights[index] - offsets[index], slope, 1e-9);
        }
    }

    /// <summary>How far it moves until a chain goes slack or is taken up, m; infinite where none ever does.</summary>
    public double Length { get; private set; }

    /// <summary>What the chains pull once it has moved, N.</summary>
    /// <param name="by">m, 0 to the length of the stretch.</param>
    public double[] LevelsAt(double by) => [.. levels.Select((level, index) => Math.Max(0, level + (by * slopes[index])))];

    private void Shorten(bool counts, double value, double slope, double hair)
    {
        if (counts && slope < -hair)
        {
            Length = Math.Min(Length, Math.Max(0, value / -slope));
        }
    }
}
