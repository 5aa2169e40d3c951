namespace Advance.Handbook;

/// <summary>Addresses and lines of digital lighting control. Source: <see cref="AnsiE111"/>.</summary>
public static class LightingControl
{
    /// <summary>Slots of one universe. Source: <see cref="AnsiE111.Slots"/>.</summary>
    public const int SlotsInUniverse = 512;

    /// <summary>Unit loads that one line drives before it needs a splitter. Source: <see cref="AnsiE111.UnitLoads"/>.</summary>
    public const int UnitLoadsOnLine = 32;

    /// <summary>Ohms of the terminator at the far end of a line. Source: <see cref="AnsiE111"/>.</summary>
    public const int TerminatorOhms = 120;

    /// <summary>The last slot of a fixture: <c>e = a + n - 1</c>.</summary>
    /// <param name="first">Its address, from 1.</param>
    /// <param name="count">How many slots.</param>
    public static int LastSlot(int first, int count) => first + count - 1;

    /// <summary>How many lines so many unit loads need: <c>l = ⌈n / m⌉</c>.</summary>
    /// <param name="unitLoads">0 or more.</param>
    /// <param name="most">On one line, at least 1: 32, or fewer by policy.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static int Lines(int unitLoads, int most)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(unitLoads);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        return ((unitLoads - 1) / most) + (unitLoads == 0 ? 0 : 1);
    }

    /// <summary>The lowest address at which so many slots are free; null where the universe has no such gap left.</summary>
    /// <param name="taken">In any order; they may overlap each other.</param>
    /// <param name="count">Slots wanted, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one slot is wanted.</exception>
    public static int? NextFree(IEnumerable<SlotRange> taken, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var first = 1;
        foreach (var range in taken.OrderBy(range => range.First))
        {
            if (new SlotRange(first, count).Overlaps(range))
            {
                first = range.Last + 1;
            }
        }

        return new SlotRange(first, count).IsInUniverse ? first : null;
    }
}
