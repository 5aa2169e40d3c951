using System.Diagnostics;
using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>Fast enough to be worked out each time a page is drawn; the best of some tries counts, as the machine may be busy.</summary>
public sealed class LiftSpeedTests
{
    [Theory]
    [InlineData(8)]
    [InlineData(20)]
    public void A_lift_takes_less_than_50_ms(int hoists)
    {
        var truss = Trusses.Even(hoists, 3, 600, 4e6, 500e3);
        Assert.Contains(Enumerable.Range(0, 200), _ => Time(truss) < 50);
    }

    private static double Time(HungBeam truss)
    {
        var watch = Stopwatch.StartNew();
        _ = LiftStudy.Of(truss, 0.01, 0.05, new([.. truss.Hoists.Select(_ => (double?)4000)], 6000, 5000, 4000));
        return watch.Elapsed.TotalMilliseconds;
    }
}
