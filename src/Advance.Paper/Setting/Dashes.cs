using Advance.Paper.Pictures;

namespace Advance.Paper.Setting;

/// <summary>The patterns of broken lines, the same for all writers.</summary>
internal static class Dashes
{
    /// <summary>Lengths of strokes and gaps in pt; null for an unbroken line.</summary>
    /// <param name="dash">Which pattern.</param>
    /// <param name="weight">Weight of the line in pt.</param>
    public static float[]? Of(Dash dash, float weight) => dash switch
    {
        Dash.Dashed => [3 + weight, 2 + weight],
        Dash.Dotted => [weight, 1.5f + weight],
        Dash.Centre => [7, 2, 1, 2],
        _ => null,
    };
}
