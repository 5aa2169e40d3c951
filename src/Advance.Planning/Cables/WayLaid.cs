using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>What somebody said of how a way is laid, read as far as the trade's own words go.</summary>
internal static class WayLaid
{
    private static readonly string[] Bridges = ["ramp", "bridge"];
    private static readonly string[] Kept = ["ramp", "bridge", "mat", "overhead", "flown", "hung", "buried", "under", "trench", "duct", "trunking", "gutter", "channel"];
    private static readonly string[] Walked = ["door", "exit", "entrance", "aisle", "gangway", "walkway", "corridor", "stairs", "road", "lane", "path", "public", "audience", "dance floor"];

    /// <summary>Ramps and bridges that leads go over: as written, else one if the words speak of one.</summary>
    public static Figure<int> Ramps(CableWay way)
    {
        var spokenOf = Speaks(way.Laid, Bridges) ? 1 : 0;
        return way.Ramps is not { } given ? Figure.Count(spokenOf) : given.IsKnown ? Figure.From(given) : Figure.Count(spokenOf) with { RestsOn = Doubts.Of(given.Doubt) };
    }

    /// <summary>Whether it says what keeps feet and wheels off the leads.</summary>
    public static bool IsKept(CableWay way) => Speaks(way.Laid, Kept) || (way.Ramps is { IsKnown: true, Value: > 0 });

    /// <summary>The first word that says people or vehicles cross there; null where none does.</summary>
    public static string? Crossed(CableWay way) => Walked.FirstOrDefault(word => Speaks(way.Laid, [word]));

    // Whole words, one or several of the thing.
    private static bool Speaks(string laid, string[] words)
    {
        var said = $" {string.Concat(laid.Select(letter => char.IsAsciiLetter(letter) ? char.ToLowerInvariant(letter) : ' '))} ";
        return words.Any(word => said.Contains($" {word} ", StringComparison.Ordinal) || said.Contains($" {word}s ", StringComparison.Ordinal));
    }
}
