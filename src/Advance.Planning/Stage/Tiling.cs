namespace Advance.Planning;

/// <summary>Whether like decks can be laid so that they fill a rectangle.</summary>
public static class Tiling
{
    /// <summary>
    /// Whether rectangles of one size, turned as needed, fill another without gap or overhang. A rectangle is filled exactly when each side
    /// of the deck divides one of its sides, and where both divide the same one only, the other can be made up of both.
    /// </summary>
    /// <param name="width">Of what is to be filled, in whole tenths of a millimetre, more than 0.</param>
    /// <param name="depth">The same, the other way.</param>
    /// <param name="long">Of the deck, in whole tenths of a millimetre, more than 0.</param>
    /// <param name="wide">The same, the other way.</param>
    public static bool Fills(int width, int depth, int @long, int wide)
    {
        var shared = Shared(@long, wide);
        if (width % shared != 0 || depth % shared != 0)
        {
            return false;
        }

        var (a, b, w, d) = (@long / shared, wide / shared, width / shared, depth / shared);
        var dividesOne = (w % a == 0 || d % a == 0) && (w % b == 0 || d % b == 0);
        return dividesOne && IsMadeUp(w, a, b) && IsMadeUp(d, a, b);
    }

    private static int Shared(int a, int b) => b == 0 ? a : Shared(b, a % b);

    private static bool IsMadeUp(int side, int a, int b)
    {
        for (var rest = side; rest >= 0; rest -= a)
        {
            if (rest % b == 0)
            {
                return true;
            }
        }

        return false;
    }
}
