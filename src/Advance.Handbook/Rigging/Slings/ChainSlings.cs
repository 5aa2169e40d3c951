using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// Chain slings of grade 8. The standard rounds each figure to a preferred number, so the table is kept, not multiplied out.
/// Source: <see cref="RiggingStandards.En8184"/>.
/// </summary>
public static class ChainSlings
{
    // Tonnes: one leg; two legs to 45° and to 60°; three or four legs to 45° and to 60°; endless, choked.
    private static readonly Dictionary<int, double[]> Grade8 = new()
    {
        [6] = [1.12, 1.60, 1.12, 2.36, 1.70, 1.80],
        [7] = [1.50, 2.12, 1.50, 3.15, 2.24, 2.50],
        [8] = [2.00, 2.80, 2.00, 4.25, 3.00, 3.15],
        [10] = [3.15, 4.25, 3.15, 6.70, 4.75, 5.00],
        [13] = [5.30, 7.50, 5.30, 11.20, 8.00, 8.50],
        [16] = [8.00, 11.20, 8.00, 17.00, 11.80, 12.50],
    };

    /// <summary>What a sling carries; null for a chain that the table does not have, and beyond 60°.</summary>
    /// <param name="millimetres">Thickness of the chain.</param>
    /// <param name="legs">1 to 4.</param>
    /// <param name="fromVertical">Degrees from the vertical, 0 or more; no matter for one leg.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no such legs.</exception>
    public static Mass? Rating(int millimetres, int legs, double fromVertical)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(legs, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(legs, 4);
        if (!Grade8.TryGetValue(millimetres, out var row) || (legs > 1 && fromVertical is not (>= 0 and <= 60)))
        {
            return null;
        }

        return Mass.FromTonnes(row[legs == 1 ? 0 : (legs == 2 ? 1 : 3) + (fromVertical > 45 ? 1 : 0)]);
    }

    /// <summary>What an endless sling carries, choked; null for a chain that the table does not have.</summary>
    /// <param name="millimetres">Thickness of the chain.</param>
    public static Mass? Endless(int millimetres) => Grade8.TryGetValue(millimetres, out var row) ? Mass.FromTonnes(row[5]) : null;
}
