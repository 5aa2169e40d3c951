using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning;

/// <summary>What is lifted in a task is of that task; limits of 25, 45 and 80 kg are the shop's policy: common practice, no source.</summary>
public sealed class LiftTests
{
    [Theory]
    [InlineData("Main", "sub", 4)]
    [InlineData("Fill", "fill", 1)]
    public void A_small_stack_takes_no_more_hands_than_its_own_boxes(string stack, string item, int hands)
    {
        var tasks = Planner.Plan(TwoStacks()).Crew.Tasks;
        var lift = tasks.Single(task => task.Address.Text == $"crew/stack/{stack}").Lift!;
        Assert.Equal((item, hands), (lift.Item, lift.Hands));
    }

    [Fact]
    public void One_box_is_a_box() => Assert.Contains(Planner.Plan(TwoStacks()).Crew.Tasks, task => task.What == "Build Fill, 1 box");

    private static Advance.Domain.Brief TwoStacks()
    {
        var gig = Gigs.Gig() with { Sound = Sound.None with { Stacks = [StackOf("Main", 2, "sub"), StackOf("Fill", 1, "fill")] } };
        return Gigs.Brief(gig, Weighing("sub", 78), Weighing("fill", 7.4));
    }

    private static Stack StackOf(string name, int count, string item) => new(name, null, default, null, [new CountedItem(count, item)], null, null, Gigs.Here);

    private static Kind Weighing(string id, double kilograms) =>
        Gigs.Kind(id, 9) with { Department = "sound", Role = Role.Loudspeaker, Weight = Given.Of(Mass.FromKilograms(kilograms), Gigs.Here, how: Known.Weighed) };
}
