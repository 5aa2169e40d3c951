using Advance.Domain.Figures;
using Advance.Planning;
using Advance.Tests.Workings;

namespace Advance.Tests.Planning;

/// <summary>Workings of the patch, checked by hand.</summary>
public sealed class PatchWorkingTests
{
    [Fact]
    public void Each_formula_gives_its_result()
    {
        var workings = ByHand.Behind(Planner.Plan(SoundGigs.Sample).Patch.Figures.Select(one => one.How).OfType<Working>()).ToList();
        Assert.True(workings.Count > 10, $"{workings.Count} workings");
        Assert.Empty(workings.Select(ByHand.Fault).OfType<string>());
    }

    [Fact]
    public void Each_figure_has_an_address_of_its_own()
    {
        var addresses = Planner.Plan(SoundGigs.Sample).Patch.Figures.Select(stated => stated.Address).ToList();
        Assert.Equal(addresses.Count, addresses.Distinct().Count());
    }

    [Fact]
    public void Lines_and_mixes_of_an_act_are_up_for_that_act_alone()
    {
        var plan = Planner.Plan(SoundGigs.Sample);
        var acts = plan.Patch.Links.Select(link => link.Act).Distinct().Order().ToList();
        Assert.Equal([null, "The Threshers"], acts);
    }
}
