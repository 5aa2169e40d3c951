namespace Advance.Planning;

/// <summary>
/// An answer without a solver: for each set of supplies that sound may hang on a first answer, cooled down to what is proven to be the least;
/// the best of them is polished. What it is worth does not hang on the order of the wishes.
/// </summary>
internal static class CircuitAllotment
{
    private const int Cooling = 200_000;
    private const int Polishing = 300_000;
    // What is so near to the least is cool enough, per mille.
    private const int Slack = 2;
    private const int MostTried = 2;
    private const int MostRefined = 24;
    private const int Full = 1000 - CircuitScore.Comfortable;

    /// <summary>Solves it.</summary>
    public static CircuitAnswer Solve(CircuitProblem problem)
    {
        var order = CircuitGreedy.Order(problem);
        var wanted = CircuitLeeway.Of(problem, default);
        var leeway = wanted.IsForAll ? wanted : CircuitLeeway.All(problem);
        var best = Tried(problem, leeway, order);
        new CircuitSearch(problem, CircuitLeeway.All(problem), best, order, Polishing).Polish();
        return new CircuitAnswer(best.Answer, best.Score, IsProven: false, LeastUse(problem, best.Score));
    }

    /// <summary>What no answer is below whose earlier aims are as good as those of a score; no more than the score's own.</summary>
    public static int LeastUse(CircuitProblem problem, CircuitScore score)
    {
        if (score.Dark > 0 || score.Use == 0)
        {
            return 0;
        }

        var leeway = CircuitLeeway.Of(problem, score);
        var cuts = new CircuitCuts(problem, leeway);
        var patterns = score.IsWhole ? Refined(problem, CircuitPattern.Of(problem, cuts).Where(pattern => pattern.Earths <= score.Earths), leeway, cuts) : [];
        return Math.Min(score.Use, patterns.Count > 0 ? patterns.Min(pattern => pattern.LeastUse) : cuts.Least(null, areLightsApart: false));
    }

    private static List<CircuitPattern> Refined(CircuitProblem problem, IEnumerable<CircuitPattern> patterns, CircuitLeeway leeway, CircuitCuts cuts) =>
        [.. patterns.Where(pattern => CircuitSockets.CanFeed(problem, pattern.Leeway(problem, leeway))).OrderBy(pattern => pattern.LeastUse).Select((pattern, index) => index < MostRefined ? pattern.Refined(cuts) : pattern)];

    // A pattern that overloads something waits until all others were tried; fewer earths before lower utilisation.
    private static CircuitLoading Tried(CircuitProblem problem, CircuitLeeway leeway, IReadOnlyList<int> order)
    {
        CircuitLoading? best = null;
        var cuts = new CircuitCuts(problem, leeway);
        var tried = 0;
        foreach (var level in CircuitPattern.Of(problem, cuts).GroupBy(pattern => pattern.Earths))
        {
            var patterns = Refined(problem, level, leeway, cuts).OrderBy(pattern => pattern.LeastUse).ToList();
            foreach (var pattern in patterns.Where(pattern => pattern.LeastUse <= Full).Take(MostTried))
            {
                if (best is { Score: { IsWhole: true } score } && score.Earths <= pattern.Earths && (score.Earths < pattern.Earths || score.Use <= pattern.LeastUse))
                {
                    break;
                }

                best = Better(best, Cooled(problem, pattern, leeway, order));
                tried++;
            }

            if (best is { Score.IsWhole: true } || tried > 2 * MostTried)
            {
                break;
            }
        }

        return best ?? Cooled(problem, new CircuitPattern(0, null, AreLightsApart: false, 0).Refined(cuts), leeway, order);
    }

    private static CircuitLoading Better(CircuitLoading? best, CircuitLoading other) => best is null || other.Score.CompareTo(best.Score) < 0 ? other : best;

    private static CircuitLoading Cooled(CircuitProblem problem, CircuitPattern pattern, CircuitLeeway leeway, IReadOnlyList<int> order)
    {
        var own = pattern.Leeway(problem, leeway);
        var loading = CircuitGreedy.Build(problem, own, order, pattern.LeastUse + Slack);
        new CircuitSearch(problem, own, loading, order, Cooling).Cool();
        return loading;
    }
}
