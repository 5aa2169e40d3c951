namespace Advance.Sheets.Templating;

/// <summary>Says why something that Scriban's manual tells of is not here.</summary>
internal static class LeftOut
{
    private const string NoClock = "A template has no clock: dates come from the gig.";
    private const string NoChance = "Nothing is left to chance: the same gig prints the same sheets.";
    private const string NoCode = "A template runs no code that it has made itself.";

    private static readonly Dictionary<string, string> Reasons = new(StringComparer.Ordinal)
    {
        ["date"] = NoClock,
        ["timespan"] = NoClock,
        ["random"] = NoChance,
        ["uuid"] = NoChance,
        ["eval"] = NoCode,
        ["eval_template"] = NoCode,
        ["object"] = "A view is printed member by member.",
        ["regex"] = "Patterns can run for ever: what has to be picked apart comes apart from the view.",
        ["html"] = "All values are escaped anyway.",
        ["include_join"] = "Loop, and include.",
    };

    /// <summary>Null for a name that was never there.</summary>
    public static string? Why(string name) => Reasons.GetValueOrDefault(name);
}
