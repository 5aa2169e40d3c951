namespace Advance.Planning;

/// <summary>A set of supplies that sound may hang on.</summary>
/// <param name="Earths">What it scores at least.</param>
/// <param name="Sound">The supplies; null for any.</param>
/// <param name="AreLightsApart">Whether lights are to be off them.</param>
/// <param name="LeastUse">What utilisation above comfort it is not below, per mille.</param>
internal sealed record CircuitPattern(int Earths, IReadOnlySet<int>? Sound, bool AreLightsApart, int LeastUse)
{
    // So many supplies can be told apart in all ways.
    private const int MostSupplies = 8;

    /// <summary>All of them, the best first; one that leaves everything where there is nothing to choose, or too much.</summary>
    public static IReadOnlyList<CircuitPattern> Of(CircuitProblem problem, CircuitCuts cuts)
    {
        var supplies = problem.Wishes.Where(wish => wish.Earth == CircuitEarth.Sound)
            .SelectMany(wish => wish.Options).Select(option => problem.Groups[option.Group].Supply).Distinct().Order().ToList();
        var any = new CircuitPattern(0, null, AreLightsApart: false, cuts.Quick(null, areLightsApart: false));
        if (supplies.Count is 0 or > MostSupplies)
        {
            return [any];
        }

        bool[] lights = problem.Wishes.Any(wish => wish.Earth == CircuitEarth.Light) ? [true, false] : [false];
        var made =
            from set in Enumerable.Range(1, (1 << supplies.Count) - 1)
            let sound = supplies.Where((_, index) => (set & (1 << index)) != 0).ToHashSet()
            from apart in lights
            where cuts.IsForAll(sound, apart)
            select new CircuitPattern(sound.Count + (lights.Length > 1 && !apart ? 1 : 0), sound, apart, cuts.Quick(sound, apart));
        IReadOnlyList<CircuitPattern> all = [.. made.OrderBy(pattern => pattern.Earths).ThenBy(pattern => pattern.LeastUse)];
        return all.Count > 0 ? all : [any];
    }

    /// <summary>With the best bound there is.</summary>
    public CircuitPattern Refined(CircuitCuts cuts) => this with { LeastUse = Math.Max(LeastUse, cuts.Least(Sound, AreLightsApart)) };

    /// <summary>Which options it leaves.</summary>
    public CircuitLeeway Leeway(CircuitProblem problem, CircuitLeeway leeway) => Sound is null ? leeway : leeway.On(problem, Sound, AreLightsApart);
}
