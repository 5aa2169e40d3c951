namespace Advance.Planning;

/// <summary>The conductors of an outlet as a stock writes them: <c>L1</c>, <c>L1-L2</c>, <c>L1-L2-N</c>.</summary>
/// <param name="Lines">Counted from 1 on the box; empty where it does not say.</param>
/// <param name="HasNeutral">Whether a neutral is named.</param>
internal readonly record struct OutletPhase(IReadOnlyList<int> Lines, bool HasNeutral)
{
    private static readonly char[] Between = ['-', '+', '/', ' '];

    /// <summary>Reads it; what cannot be read says nothing.</summary>
    public static OutletPhase Read(string text)
    {
        var words = text.Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var lines = words.Where(word => word is ['L' or 'l', >= '1' and <= '3']).Select(word => word[1] - '0').Distinct().ToList();
        return new OutletPhase(lines, words.Any(word => word is "N" or "n"));
    }
}
