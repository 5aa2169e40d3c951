using Advance.Handbook;
using CsCheck;

namespace Advance.Tests.Handbook.Control;

public sealed class LightingControlTests
{
    private static readonly Gen<SlotRange> Ranges = Gen.Select(Gen.Int[1, 512], Gen.Int[1, 40]).Select(range => new SlotRange(range.Item1, range.Item2));

    [Fact]
    public void Two_fixtures_overlap_where_they_share_a_slot() =>
        Gen.Select(Ranges, Ranges).Sample((a, b) => Assert.Equal(SlotsOf(a).Intersect(SlotsOf(b)).Any(), a.Overlaps(b)));

    [Fact]
    public void The_next_free_address_is_the_lowest_that_overlaps_nothing() =>
        Gen.Select(Ranges.Array[0, 30], Gen.Int[1, 60]).Sample((taken, count) =>
        {
            var used = taken.SelectMany(SlotsOf).ToHashSet();
            var expected = Enumerable.Range(1, 513 - count).Cast<int?>().FirstOrDefault(first => !SlotsOf(new SlotRange(first!.Value, count)).Any(used.Contains));
            Assert.Equal(expected, LightingControl.NextFree(taken, count));
        });

    [Fact]
    public void A_full_universe_has_none() => Assert.Null(LightingControl.NextFree([new SlotRange(1, 512)], 1));

    [Fact]
    public void The_last_slot_by_hand() => Assert.Equal(new SlotRange(101, 16).Last, LightingControl.LastSlot(101, 16));

    private static IEnumerable<int> SlotsOf(SlotRange range) => Enumerable.Range(range.First, range.Count);
}
