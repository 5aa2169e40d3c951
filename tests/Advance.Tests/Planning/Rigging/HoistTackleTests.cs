using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>What a hoist lifts and its point carries: sums by hand.</summary>
public sealed class HoistTackleTests
{
    private static readonly HoistTackle Tackle = new(Body: 500, Chain: 250, Bag: 20, Lower: 30, Upper: 60);

    [Fact]
    public void Body_at_the_truss_lifts_itself()
    {
        Assert.Equal(4280, Tackle.Lifted(4000, 1, bodyAtTruss: false));
        Assert.Equal(4800, Tackle.Lifted(4000, 1, bodyAtTruss: true));
        Assert.Equal(5350, Tackle.Lifted(4000, 1.25, bodyAtTruss: false));
    }

    [Fact]
    public void The_point_carries_everything_wherever_the_body_is_and_however_many_falls()
    {
        Assert.Equal(4860, Tackle.OnPoint(4000, 1));
        Assert.Equal(6075, Tackle.OnPoint(4000, 1.25));
        Assert.Equal(2140, HoistTackle.InChain(4280, 2));
    }

    [Fact]
    public void Snag_load_of_EN_14492_2()
    {
        // 1.35 · 5000 + 5280 - 5000.
        Assert.Equal(7030, HoistTackle.Snag(5000, 1.35, 5280), 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => HoistTackle.Snag(5000, 0.9, 5280));
    }
}
