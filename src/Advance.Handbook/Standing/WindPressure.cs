using UnitsNet;

namespace Advance.Handbook;

/// <summary>What moving air presses. Source: <see cref="En1991.Pressure"/>.</summary>
public static class WindPressure
{
    /// <summary>Density of air that EN 1991-1-4 takes, kg/m³.</summary>
    public const double Density = 1.25;

    private const double PascalsPerPsf = 47.880258980335843;

    /// <summary>Of a gust: <c>q = ρ / 2 · v²</c>.</summary>
    /// <param name="gust">m/s, 0 or more; the gust at the height of the thing, never a mean over ten minutes.</param>
    /// <param name="density">kg/m³, over 0.</param>
    public static Pressure Of(Speed gust, double density = Density) => Pressure.FromPascals(density / 2 * gust.MetersPerSecond * gust.MetersPerSecond);

    /// <summary>The same in pounds per square foot, for tables of the United States.</summary>
    /// <param name="pressure">Pa.</param>
    public static double PoundsPerSquareFoot(Pressure pressure) => pressure.Pascals / PascalsPerPsf;

    /// <summary>What it pushes with: <c>F = q · A</c>, where the area is times its coefficient already.</summary>
    /// <param name="pressure">Pa.</param>
    /// <param name="seen">Area times force coefficient, m².</param>
    public static Force On(Pressure pressure, Area seen) => Force.FromNewtons(pressure.Pascals * seen.SquareMeters);
}
