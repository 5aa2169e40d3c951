using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>What a bridle bears and how far it gives.</summary>
public sealed class BridleBearingTests
{
    [Fact]
    public void Two_legs_give_as_a_truss_of_two_bars()
    {
        // Two bars at θ from the vertical under a load at their joint: δ = P L / (2 E A cos² θ). Textbook strength of materials, from memory.
        var plan = BridleShow.Of("legs: [2 m, 2 m], gear: [2 x steel-1]");
        var placed = plan.Rigging.Bridles.Single().Placed;
        var bar = 2 * 0.004 * 1 / (2000 * 9.80665);
        var cosine = Math.Sqrt(4 - 2.25) / 2;
        Assert.Equal(bar / (2 * cosine * cosine), new BridleBearing(plan.Brief, placed).Flexibility, 1e-15);
    }

    [Fact]
    public void It_bears_what_its_points_bear_together()
    {
        // Half of it on each of two points of 300 kg, and 2 kg of steel on each.
        var plan = BridleShow.Of("legs: [2 m, 2 m], gear: [2 x steel-1]");
        Assert.Equal(2 * (300 - 2), new BridleBearing(plan.Brief, plan.Rigging.Bridles.Single().Placed).Most(1.25)!.Value, 1e-6);
    }

    [Fact]
    public void A_weak_leg_bears_less_than_its_point()
    {
        // 300 kg, half of it over people; a leg pulls L / (2 V) of what hangs, and 1.25 times that while it moves.
        var plan = BridleShow.Of("legs: [2 m, 2 m], gear: [steel-weak]");
        var pull = 2 / (2 * Math.Sqrt(4 - 2.25));
        Assert.Equal(150 / (1.25 * pull), new BridleBearing(plan.Brief, plan.Rigging.Bridles.Single().Placed).Most(1.25)!.Value, 1e-6);
    }

    [Fact]
    public void A_point_that_nobody_has_told_of_leaves_it_open()
    {
        var plan = BridleShow.Of("legs: [2 m, 2 m], gear: [2 x steel-1]", limit: "TBC venue");
        Assert.Null(new BridleBearing(plan.Brief, plan.Rigging.Bridles.Single().Placed).Most(1.25));
    }

    [Fact]
    public void A_pick_on_it_counts_in_the_tolerance_of_its_truss()
    {
        // A truss of which everything is known but the bridle's point: then nothing bounds that pick.
        var (open, told) = (BridleShow.Of("drop: 1.2 m", limit: "TBC venue"), BridleShow.Of("drop: 1.2 m"));
        Assert.Null(open.Rigging.Trusses.Single().BoundUse is { Hoist: 1 } use ? use : null);
        Assert.Equal(1, told.Rigging.Trusses.Single().BoundUse!.Hoist);
    }
}
