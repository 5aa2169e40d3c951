namespace Advance.Planning;

/// <summary>
/// Finds the boxes that stand as pairs: one of two neighbours upside-down, so that the ends meet that the stock says, and both throw
/// symmetrically.
/// </summary>
internal static class Pairs
{
    private const string High = "high";
    private const string Low = "low";

    /// <summary>Marks every box that is paired with the position of the other. As many pairs as can be are found, from the floor up.</summary>
    public static IReadOnlyList<StackedBox> Mark(IReadOnlyList<StackedBox> boxes)
    {
        var marked = boxes.ToList();
        for (var lower = 0; lower + 1 < marked.Count; lower++)
        {
            if (AreMet(marked[lower], marked[lower + 1]) == true)
            {
                marked[lower] = marked[lower] with { PairedWith = marked[lower + 1].Position };
                marked[lower + 1] = marked[lower + 1] with { PairedWith = marked[lower].Position };
                lower++;
            }
        }

        return marked;
    }

    /// <summary>Runs of neighbours that may all be paired, each of two boxes or more.</summary>
    public static IEnumerable<IReadOnlyList<StackedBox>> Runs(IReadOnlyList<StackedBox> boxes)
    {
        var run = new List<StackedBox>();
        foreach (var box in boxes)
        {
            if (run.Count > 0 && !run[^1].MayPairWith(box))
            {
                if (run.Count > 1)
                {
                    yield return run;
                }

                run = [];
            }

            run.Add(box);
        }

        if (run.Count > 1)
        {
            yield return run;
        }
    }

    /// <summary>Whether the ends of two neighbours meet that the stock says; null where it does not say which.</summary>
    public static bool? AreMet(StackedBox lower, StackedBox upper)
    {
        if (!lower.MayPairWith(upper))
        {
            return false;
        }

        var ends = lower.Piece.Kind?.Loudspeaker?.PairedEnds is { Length: > 0 } said ? said : upper.Piece.Kind?.Loudspeaker?.PairedEnds ?? "";
        return ends.Length == 0 ? null : EndUp(lower) == ends && EndDown(upper) == ends;
    }

    // The highs come out at the top of a box that stands on its feet.
    private static string EndUp(StackedBox box) => box.IsUpsideDown ? Low : High;

    private static string EndDown(StackedBox box) => box.IsUpsideDown ? High : Low;
}
