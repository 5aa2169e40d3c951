namespace Advance.Planning;

/// <summary>A list of names in a sentence: the first few, and how many more.</summary>
internal static class FewNames
{
    private const int Most = 3;

    /// <summary><c>crate-cable, rack-6u, bag-stand and 4 more</c>.</summary>
    public static string Of(IReadOnlyList<string> names)
    {
        var shown = string.Join(", ", names.Take(Most));
        return names.Count > Most ? $"{shown} and {names.Count - Most} more" : shown;
    }
}
