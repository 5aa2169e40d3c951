using UnitsNet;

namespace Advance.Handbook;

/// <summary>The Beaufort scale: a mean over ten minutes at 10 m, never a gust.</summary>
public static class Beaufort
{
    // Where each number begins, m/s.
    private static readonly double[] From = [0, 0.3, 1.6, 3.4, 5.5, 8.0, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7];

    /// <summary>The number of a mean wind, 0 to 12; the table has one decimal, and what lies between two rows belongs to the lower.</summary>
    /// <param name="mean">m/s, 0 or more.</param>
    public static int Of(Speed mean)
    {
        var number = Array.FindLastIndex(From, from => mean.MetersPerSecond >= from);
        return Math.Max(0, number);
    }
}
