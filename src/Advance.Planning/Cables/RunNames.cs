namespace Advance.Planning;

/// <summary>How several are named in one sentence.</summary>
internal static class RunNames
{
    private const int MostNamed = 4;

    /// <summary><c>SB1-1, SB1-2 and 5 more</c>.</summary>
    public static string Of(IEnumerable<string> names)
    {
        var all = names.Distinct(StringComparer.Ordinal).ToList();
        return all.Count <= MostNamed + 1 ? string.Join(", ", all) : $"{string.Join(", ", all.Take(MostNamed))} and {all.Count - MostNamed} more";
    }

    /// <summary>The labels of runs.</summary>
    public static string Of(IEnumerable<Run> runs) => Of(runs.Select(run => run.Label));

    /// <summary><c>1 run</c>, <c>3 runs</c>.</summary>
    public static string Count(int runs) => runs == 1 ? "1 run" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{runs} runs");
}
