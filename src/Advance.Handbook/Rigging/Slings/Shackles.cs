namespace Advance.Handbook;

/// <summary>
/// Forged shackles with screw pin or bolt, as makers of North America rate them, in tons as printed (mostly metric: ask the maker).
/// Source: <see cref="RiggingStandards.Shackles"/>.
/// </summary>
public static class Shackles
{
    /// <summary>The most degrees between two legs in one bow.</summary>
    public const double MostIncludedAngle = 120;

    private static readonly Dictionary<string, (double Carbon, double? Alloy)> Tons = new(StringComparer.Ordinal)
    {
        ["3/16"] = (1 / 3.0, null),
        ["1/4"] = (0.5, null),
        ["5/16"] = (0.75, null),
        ["3/8"] = (1, 2),
        ["7/16"] = (1.5, 2.6),
        ["1/2"] = (2, 3.3),
        ["5/8"] = (3.25, 5),
        ["3/4"] = (4.75, 7),
        ["7/8"] = (6.5, 9.5),
        ["1"] = (8.5, 12.5),
        ["1-1/8"] = (9.5, 15),
        ["1-1/4"] = (12, 18),
    };

    /// <summary>The sizes, inches of the bow.</summary>
    public static IReadOnlyList<string> Sizes => [.. Tons.OrderBy(pair => pair.Value.Carbon).Select(pair => pair.Key)];

    /// <summary>Rating in tons; null for a size that the table does not have.</summary>
    /// <param name="inches">Thickness of the bow: <c>5/8</c>.</param>
    /// <param name="isAlloy">Of alloy steel, not of carbon steel.</param>
    public static double? Rating(string inches, bool isAlloy) => Tons.TryGetValue(inches, out var row) ? (isAlloy ? row.Alloy : row.Carbon) : null;

    /// <summary>
    /// Share of its rating under a side load: 1 in line, 0.7 to 45°, 0.5 to 90°. A round pin takes none at all.
    /// Source: <see cref="RiggingStandards.AsmeB3026"/>.
    /// </summary>
    /// <param name="fromInLine">Degrees, 0 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is none of these.</exception>
    public static double SideLoad(double fromInLine)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fromInLine);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(fromInLine, 90);
        return fromInLine switch { 0 => 1, <= 45 => 0.7, _ => 0.5 };
    }
}
