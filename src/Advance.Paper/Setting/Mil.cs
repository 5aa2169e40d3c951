namespace Advance.Paper.Setting;

/// <summary>Layout counts in whole thousandths of a point, so that breaks are the same on every machine.</summary>
internal static class Mil
{
    /// <summary>Thousandths of a point to a millimetre, exact to 1e-6.</summary>
    private const double PerMm = 72000 / 25.4;

    public static int FromMm(double mm) => (int)Math.Round(mm * PerMm, MidpointRounding.AwayFromZero);

    public static double ToMm(int mil) => mil / PerMm;

    public static int FromPt(double pt) => (int)Math.Round(pt * 1000, MidpointRounding.AwayFromZero);

    public static float ToPt(int mil) => mil / 1000f;
}
