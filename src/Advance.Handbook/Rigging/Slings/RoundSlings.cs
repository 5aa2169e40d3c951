using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// Textile round slings of Europe, by their colour. Source: <see cref="RiggingStandards.En1492"/>. Slings of North America wear other colours for other
/// ratings: a colour says nothing across regions.
/// </summary>
public static class RoundSlings
{
    private static readonly Dictionary<string, double> Tonnes = new(StringComparer.Ordinal)
    {
        ["violet"] = 1,
        ["green"] = 2,
        ["yellow"] = 3,
        ["grey"] = 4,
        ["red"] = 5,
        ["brown"] = 6,
        ["blue"] = 8,
        ["orange"] = 10,
    };

    /// <summary>The colours, rising; orange stands for 10 t and more.</summary>
    public static IReadOnlyList<string> Colours => [.. Tonnes.OrderBy(pair => pair.Value).Select(pair => pair.Key)];

    /// <summary>What one carries straight; null for a colour that is none of Europe's.</summary>
    public static Mass? Straight(string colour) => Tonnes.TryGetValue(colour, out var tonnes) ? Mass.FromTonnes(tonnes) : null;
}
