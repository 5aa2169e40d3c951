namespace Advance.Paper.Pictures.Placing;

/// <summary>The places at which a label is tried, in order. All measures in 0.1 mm.</summary>
internal static class Candidates
{
    private const int Gap = 10;

    private static readonly int[] Rings = [50, 90, 140, 200, 280, 380];

    // Sixteen ways, flat and upright ones first; in thousandths, so that no rounding depends on the machine.
    private static readonly (int X, int Y)[] Ways =
    [
        (1000, 0), (-1000, 0), (0, 1000), (0, -1000),
        (707, -707), (-707, -707), (707, 707), (-707, 707),
        (924, -383), (-924, -383), (924, 383), (-924, 383),
        (383, -924), (-383, -924), (383, 924), (-383, 924),
    ];

    /// <summary>In the symbol: its middle, then along its upper and lower edge.</summary>
    public static IEnumerable<Box> Inside(Box of, bool isArea, int width, int height)
    {
        int left = of.MiddleX - (width / 2), top = of.MiddleY - (height / 2);
        // The middle of an area is for what stands in it.
        if (!isArea)
        {
            yield return Place(left, top, width, height);
        }

        yield return Place(left, of.Top + Gap, width, height);
        yield return Place(left, of.Bottom - Gap - height, width, height);
        foreach (var y in new[] { of.Top + Gap, of.Bottom - Gap - height, top })
        {
            yield return Place(of.Left + Gap, y, width, height);
            yield return Place(of.Right - Gap - width, y, width, height);
        }
    }

    /// <summary>Close beside the symbol: under it, over it, right, left, then slid along its edges, then at its corners.</summary>
    public static IEnumerable<Box> Beside(Box of, int width, int height)
    {
        int middleX = of.MiddleX - (width / 2), middleY = of.MiddleY - (height / 2);
        int right = of.Right + Gap, left = of.Left - Gap - width, under = of.Bottom + Gap, over = of.Top - Gap - height;
        foreach (var (x, y) in new[]
        {
            (middleX, under), (middleX, over), (right, middleY), (left, middleY),
            (of.Left, under), (of.Right - width, under), (of.Left, over), (of.Right - width, over),
            (right, of.Top), (right, of.Bottom - height), (left, of.Top), (left, of.Bottom - height),
            (right, under), (left, under), (right, over), (left, over),
            (right, over + (height / 2)), (right, under - (height / 2)), (left, over + (height / 2)), (left, under - (height / 2)),
        })
        {
            yield return Place(x, y, width, height);
        }
    }

    /// <summary>Farther and farther off, to be joined by a leader; not too near where many shall find room.</summary>
    public static IEnumerable<Box> Around(Box of, int width, int height, bool isHeaped)
    {
        foreach (var ring in isHeaped ? Rings.Skip(2) : Rings)
        {
            foreach (var (wayX, wayY) in Ways)
            {
                // The middle of the label moves on an ellipse that keeps its edge at the ring's distance.
                var x = of.MiddleX + (wayX * (((of.Width + width) / 2) + ring) / 1000);
                var y = of.MiddleY + (wayY * (((of.Height + height) / 2) + ring) / 1000);
                yield return Place(x - (width / 2), y - (height / 2), width, height);
            }
        }
    }

    /// <summary>In the margin at the right and at the left of all things, level with the symbol first.</summary>
    public static IEnumerable<Box> Margin(Box of, Box all, int width, int height)
    {
        const int steps = 60;
        const int step = 10;
        var isRight = of.MiddleX >= all.MiddleX;
        for (var i = 0; i <= steps; i++)
        {
            foreach (var sign in i == 0 ? [1] : new[] { -1, 1 })
            {
                foreach (var toRight in new[] { isRight, !isRight })
                {
                    var y = of.MiddleY - (height / 2) + (sign * i * step);
                    yield return Place(toRight ? all.Right + (4 * Gap) : all.Left - (4 * Gap) - width, y, width, height);
                }
            }
        }
    }

    private static Box Place(int left, int top, int width, int height) => new(left, top, left + width, top + height);
}
