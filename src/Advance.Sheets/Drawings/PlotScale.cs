using Advance.Paper.Pictures;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>From the stage's metres (x to stage left, y upstage) to a scene's millimetres (y downwards, the audience at the foot).</summary>
internal static class PlotScale
{
    private const double MillimetresPerMetre = 1000;

    public static double Mm(double metres) => metres * MillimetresPerMetre;

    public static Point At(double x, double y) => new(Mm(x), -Mm(y));

    public static Point At(Spot spot) => At(spot.X, spot.Y);
}
