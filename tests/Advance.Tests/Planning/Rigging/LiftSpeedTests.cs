using System.Diagnostics;
using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>Fast enough to be worked out each time a page is drawn; the best of some tries counts, as the machine may be busy.</summary>
public sealed class LiftSpeedTests
{
    [Theory]
    [InlineData(8, 50)]
    [InlineData(20, 200)]
    public void A_lift_is_worked_out_at_once(int hoists, double milliseconds)
    {
        var truss = Trusses.Even(hoists, 3, 600, 4e6, 500e3);
        Assert.True(Enumerable.Range(0, 20).Min(_ => Time(truss)) < milliseconds);
    }

    private static double Time(HungBeam truss)
    {
        var watch = Stopwatch.StartNew();
        _ = LiftStudy.Of(truss, 0.01, 0.05, new([.. truss.Hoists.Select(_ => (double?)4000)], 6000, 5000, 4000));
        return watch.Elapsed.TotalMilliseconds;
    }
}
