using Advance.Domain.Figures;
using Advance.Planning;
using Advance.Tests.Workings;

namespace Advance.Tests.Planning;

/// <summary>Workings of stacks and of the stage, and of every delay, checked by hand.</summary>
public sealed class WorkingTests
{
    [Fact]
    public void Each_formula_gives_its_result()
    {
        var timed = SoundGigs.Plan(SoundGigs.Both("sub-full, sub-full rear-facing, top", "delay: 3 ms") + "\n    Late: {place: SR 1 m DS 20 m, from-floor-up: [top], delay-of: Main, heard-at: SL 3 m DS 30 m, fed-by: DRIVE out 3}");
        var plans = new[] { Planner.Plan(SoundGigs.Sample), timed };
        var stated = plans.SelectMany(plan => plan.Sound.Figures.Concat(plan.Stage.Figures).Concat(plan.Drive.Figures)).ToList();
        var workings = ByHand.Behind(stated.Select(one => one.How).OfType<Working>()).ToList();
        Assert.True(workings.Count > 40, $"{workings.Count} workings");
        Assert.Empty(workings.Select(ByHand.Fault).OfType<string>());
    }

    [Fact]
    public void Each_figure_has_an_address_of_its_own()
    {
        var plan = Planner.Plan(SoundGigs.Sample);
        var addresses = plan.Sound.Figures.Concat(plan.Stage.Figures).Concat(plan.Drive.Figures).Select(stated => stated.Address).ToList();
        Assert.Equal(addresses.Count, addresses.Distinct().Count());
    }
}
