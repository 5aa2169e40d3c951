using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// How much stronger the gust at a height is than the mean over ten minutes at 10 m in open country, which is what forecasts and the Beaufort
/// scale tell. Source: <see cref="En1991.Profile"/>.
/// </summary>
public static class GustProfile
{
    // z₀ and least height of each terrain, m.
    private static readonly Dictionary<Terrain, (double Rough, double Least)> Table = new()
    {
        [Terrain.Sea] = (0.003, 1),
        [Terrain.Flat] = (0.01, 1),
        [Terrain.Open] = (0.05, 2),
        [Terrain.Suburb] = (0.3, 5),
        [Terrain.Town] = (1, 10),
    };

    /// <summary>Turbulence: <c>I = 1 / ln(z / z₀)</c>.</summary>
    /// <param name="height">m, over 0; under the least height of the terrain as at it.</param>
    /// <param name="terrain">What the wind comes over.</param>
    public static double Turbulence(Length height, Terrain terrain) => 1 / Logarithm(height, terrain);

    /// <summary>Mean wind there over mean wind at 10 m in open country: <c>c = 0.19 · (z₀ / 0.05)^0.07 · ln(z / z₀)</c>.</summary>
    /// <param name="height">m, over 0; under the least height of the terrain as at it.</param>
    /// <param name="terrain">What the wind comes over.</param>
    public static double Mean(Length height, Terrain terrain) => 0.19 * Math.Pow(Table[terrain].Rough / 0.05, 0.07) * Logarithm(height, terrain);

    /// <summary>Pressure of the gust over pressure of the mean at 10 m in open country: <c>c² · (1 + 7 · I)</c>.</summary>
    /// <param name="height">m, over 0.</param>
    /// <param name="terrain">What the wind comes over.</param>
    public static double Exposure(Length height, Terrain terrain)
    {
        var mean = Mean(height, terrain);
        return mean * mean * (1 + (7 * Turbulence(height, terrain)));
    }

    /// <summary>The gust over the mean at 10 m in open country; its square is <see cref="Exposure"/>.</summary>
    /// <param name="height">m, over 0.</param>
    /// <param name="terrain">What the wind comes over.</param>
    public static double Gust(Length height, Terrain terrain) => Math.Sqrt(Exposure(height, terrain));

    private static double Logarithm(Length height, Terrain terrain)
    {
        var (rough, least) = Table[terrain];
        return Math.Log(Math.Max(height.Meters, least) / rough);
    }
}
