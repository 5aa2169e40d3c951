using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using CsCheck;

namespace Advance.Tests.Planning.Power;

/// <summary>The order in which devices are closed.</summary>
public sealed class SwitchOnTests
{
    private static readonly Plan Sample = Planner.Plan(BriefReader.Read(new FolderDoor(Repository.Path("sample-gigs")), "harvest-supper/gig.yaml").Brief!);

    [Fact]
    public void Every_circuit_comes_on_with_exactly_one_device_that_carries_it() => PowerGigs.Any.Sample(
        brief =>
        {
            var power = Planner.Plan(brief).Power;
            Assert.Equal(
                power.Circuits.Select(circuit => circuit.Address).Order(),
                power.SwitchOn.SelectMany(step => step.Circuits).Select(circuit => circuit.Address).Order());
            Assert.All(power.SwitchOn, step => Assert.All(step.Circuits, circuit => Assert.Contains(circuit.Outlet.Upwards, point => point.Address == step.Device.Address)));
            Assert.Equal(Enumerable.Range(1, power.SwitchOn.Count), power.SwitchOn.Select(step => step.Number));
        },
        iter: 100);

    // Common practice, no source: what makes the signal comes on first, what is heard comes on last.
    [Fact]
    public void What_is_heard_comes_on_after_what_makes_the_signal()
    {
        var power = Sample.Power;
        var desk = power.SwitchOn.Last(step => step.Device.Loads.All(load => load.Use == PowerUse.Sound)).Number;
        var stacks = power.SwitchOn.Where(step => step.Device.Loads.Any(load => load.Use == PowerUse.Loudspeaker)).ToList();
        Assert.NotEmpty(stacks);
        Assert.All(stacks, step => Assert.True(step.Number > desk));
        Assert.Equal(power.SwitchOn.Count, stacks[^1].Number);
    }

    [Fact]
    public void An_outlet_of_a_strip_comes_on_with_the_device_before_it()
    {
        var power = Sample.Power;
        var strip = power.Circuits.First(circuit => circuit.Row.Device.Length == 0);
        Assert.Equal(strip.Outlet.FedBy!.FedBy!.Address, power.StepOf(strip.Outlet)!.Device.Address);
    }
}
