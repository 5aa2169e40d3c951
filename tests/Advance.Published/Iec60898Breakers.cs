using Advance.Handbook;

namespace Advance.Published;

/// <summary>IEC 60898-1: instantaneous tripping of types B, C and D, as several pages on the standard print it; the time from memory (Table 7).</summary>
public sealed class Iec60898Breakers
{
    [Theory]
    [InlineData(BreakerType.B, 3, 5)]
    [InlineData(BreakerType.C, 5, 10)]
    [InlineData(BreakerType.D, 10, 20)]
    public void Instantaneous_tripping(BreakerType type, int holds, int opens)
    {
        Assert.Equal(holds, Breakers.HoldsBelow(type));
        Assert.Equal(opens, Breakers.OpensFrom(type));
    }

    [Fact]
    public void Within_a_tenth_of_a_second_from_memory() => Assert.Equal(0.1, Breakers.AtOnce.Seconds);

    [Theory]
    [InlineData("B6", BreakerType.B)]
    [InlineData("C16", BreakerType.C)]
    [InlineData("D125", BreakerType.D)]
    [InlineData("K16", null)]
    [InlineData("BS 88", null)]
    [InlineData("C", null)]
    [InlineData("", null)]
    public void Types_as_devices_are_marked(string device, BreakerType? type) => Assert.Equal(type, Breakers.TypeOf(device));
}
