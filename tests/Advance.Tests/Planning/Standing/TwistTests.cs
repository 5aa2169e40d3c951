using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;

namespace Advance.Tests.Planning.Standing;

/// <summary>Wind off the middle of a sheet turns it on its feet: by hand, and never more than the best that friction could do.</summary>
public sealed class TwistTests
{
    // 20 kg on its whole underside of 1 m, grip 0.5, 2 m² of sheet 1 m wide, 5.5 m/s. Half of its underside holds in its own middle, 0.5 m from that of the other half.
    [Fact]
    public void Half_an_underside_holds_about_the_other_by_hand()
    {
        var push = 0.5 * 1.25 * 5.5 * 5.5 * 1.8 * 2;
        Assert.Equal(20 * 9.80665 * 0.5 * 0.25 / ((push * 0.25) + (push * 0.25 * 1)), Turning("banner-on-its-underside"), 1e-9);
    }

    // 600 kg on four feet 2 m apart, 1 m² of sheet 2 m wide, 12 m/s.
    [Fact]
    public void Two_feet_hold_about_the_other_two_by_hand()
    {
        var push = 0.5 * 1.25 * 12 * 12 * 1.8 * 1;
        Assert.Equal(600 * 9.80665 * 0.5 * 1 / ((push * 1) + (push * 0.25 * 2)), Turning("feet-far-apart"), 1e-9);
    }

    // Whatever place it were to turn about, friction under its feet would hold at least that much: the upper bound of plasticity, over a grid of centres.
    [Fact]
    public void No_centre_that_it_could_turn_about_holds_less()
    {
        var (weight, push) = (600 * 9.80665, 0.5 * 1.25 * 12 * 12 * 1.8);
        var least = double.MaxValue;
        for (var x = -30.05; x < 30; x += 0.1)
        {
            for (var y = -3.05; y < 3; y += 0.1)
            {
                var held = new[] { (X: -1, Y: -1), (X: 1, Y: -1), (X: 1, Y: 1), (X: -1, Y: 1) }.Sum(foot => 0.5 * weight / 4 * Math.Sqrt(Math.Pow(foot.X - x, 2) + Math.Pow(foot.Y - y, 2)));
                least = Math.Min(least, held / (push * Math.Abs((0.25 * 2) - x)));
            }
        }

        Assert.InRange(Turning("feet-far-apart"), 0.6 * least, least);
    }

    [Fact]
    public void It_comes_down_before_it_turns()
    {
        var item = Item("banner-on-its-underside");
        Assert.Equal(5.5 * Math.Sqrt(Turning("banner-on-its-underside") / 1.5), item.Limit!.Value!.Value.MetersPerSecond, 1e-9);
        Assert.Equal("turns on its feet", item.LimitFrom);
    }

    private static double Turning(string gig) => Item(gig).Turning!.Value!.Value;

    private static StandingItem Item(string gig) => Planner.Plan(BriefReader.Read(new FolderDoor(RuleCase.Folder), $"stack/twists/{gig}.yaml").Brief!).Standing.Items.Single();
}
