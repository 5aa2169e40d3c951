using Advance.Handbook;

namespace Advance.Tests.Handbook.Standing;

/// <summary>What each foot carries, whatever their number.</summary>
public sealed class FootLoadsTests
{
    private static readonly IReadOnlyList<(double X, double Y)> Five = [(-1, -0.8), (1, -0.8), (1.2, 0.7), (0, 1.1), (-1.2, 0.7)];

    [Fact]
    public void Feet_never_pull_and_hold_the_load_where_it_is()
    {
        for (var x = -1.5; x <= 1.5; x += 0.125)
        {
            for (var y = -1.25; y <= 1.25; y += 0.125)
            {
                if (FootLoads.Shares(Five, x, y) is not { } shares)
                {
                    continue;
                }

                Assert.All(shares, share => Assert.True(share >= 0));
                Assert.Equal(1, shares.Sum(), 1e-9);
                Assert.Equal(x, shares.Zip(Five, (share, foot) => share * foot.X).Sum(), 1e-6);
                Assert.Equal(y, shares.Zip(Five, (share, foot) => share * foot.Y).Sum(), 1e-6);
            }
        }
    }

    [Fact]
    public void Outside_its_feet_it_tips()
    {
        Assert.Null(FootLoads.Shares(Five, 1.5, 0));
        Assert.NotNull(FootLoads.Shares(Five, 0, 0));
    }

    [Fact]
    public void Near_an_edge_the_feet_far_from_it_lift()
    {
        // Four feet of a square, the load next to one corner: the foot across from it would have to pull.
        var shares = FootLoads.Shares([(-1, -1), (1, -1), (1, 1), (-1, 1)], 0.7, 0.7)!;
        Assert.Equal(0, shares[0]);
        Assert.Equal(0.7, shares[2], 1e-9);
    }
}
