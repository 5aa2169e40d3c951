namespace Advance.Paper.Pictures.Placing;

/// <summary>The scales that a ruler in a toolbox knows.</summary>
internal static class Ratios
{
    private static readonly int[] Usual = [1, 2, 5, 10, 20, 25, 50, 75, 100, 125, 200, 250, 500, 1000, 2000, 2500, 5000, 10_000, 20_000, 50_000];

    /// <summary>Usual ratios from large to small, beginning with the first that can fit.</summary>
    /// <param name="extent">What is drawn.</param>
    /// <param name="widthMm">Width of the box on the paper.</param>
    /// <param name="heightMm">Height of the box on the paper.</param>
    public static IEnumerable<int> That(Extent extent, double widthMm, double heightMm)
    {
        foreach (var ratio in Usual)
        {
            if ((extent.Width / ratio <= widthMm && extent.Height / ratio <= heightMm) || ratio == Usual[^1])
            {
                yield return ratio;
            }
        }
    }
}
