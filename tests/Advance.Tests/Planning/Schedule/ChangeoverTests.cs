using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning;

/// <summary>
/// The changeovers of the festival that the samples describe: ten off and ten on without rolling risers, a line a minute for two who patch, 20 s to
/// check each line and mix, 3 minutes to hand over. Common practice, no source.
/// </summary>
public sealed class ChangeoverTests
{
    [Fact]
    public void Thirty_eight_inputs_and_eight_mixes_take_38_of_40_minutes()
    {
        var changeover = Assert.Single(Between(40, inputs: 38, mixes: 8));
        Assert.Equal(20 + (46.0 / 3) + 3, changeover.Needed.Value!.Value.Minutes, 9);
        Assert.Equal(36, changeover.Allowed.Value!.Value.Minutes, 9);
    }

    [Fact]
    public void Many_lines_to_patch_take_longer_than_striking_and_setting() =>
        Assert.Equal(25 + (50.0 / 3) + 3, Assert.Single(Between(60, inputs: 50, mixes: 0)).Needed.Value!.Value.Minutes, 9);

    [Fact]
    public void Lines_that_keep_their_port_are_not_patched_anew()
    {
        var shared = new PortRange("SB1", PortKind.Input, new NumberRange(1, 1));
        var first = Gigs.Act("First", Gigs.Line(1, port: shared)) with { Sets = [Set(15, 0, 40)] };
        var second = Gigs.Act("Second", Gigs.Line(1, port: shared), Gigs.Line(2)) with { Sets = [Set(16, 10, 50)] };
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig(first, second).WithBox("box"), Gigs.Box("box", 8)));
        Assert.Equal(1, Assert.Single(plan.Crew.Changeovers).Lines);
    }

    [Fact]
    public void It_is_never_shorter_than_policy_and_a_festival_takes_longer()
    {
        var quick = ChangeoverTimes.Default with { StrikeAndSet = Duration.Zero };
        Assert.Equal(15, Assert.Single(Between(40, inputs: 1, mixes: 0, quick)).Needed.Value!.Value.Minutes, 9);
        Assert.Equal(20, Assert.Single(Between(40, inputs: 1, mixes: 0, quick, trucks: 2)).Needed.Value!.Value.Minutes, 9);
    }

    [Fact]
    public void Two_sets_of_one_act_have_none()
    {
        var act = Gigs.Act("Band") with { Sets = [Set(20, 0, 45), Set(21, 15, 60)] };
        Assert.Empty(Planner.Plan(Gigs.Brief(Gigs.Gig(act))).Crew.Changeovers);
    }

    private static IReadOnlyList<Changeover> Between(int gap, int inputs, int mixes, ChangeoverTimes? times = null, int trucks = 0)
    {
        var row = Gigs.Line(1) with { Channels = new NumberRange(1, inputs) };
        var first = Gigs.Act("First") with { Sets = [Set(16, 10, 50)] };
        var second = Gigs.Act("Second", row) with
        {
            Sets = [Set(17, gap, 60)],
            Mixes = [.. Enumerable.Range(1, mixes).Select(mix => new MixRow(new NumberRange(mix, mix), "somebody", null, null, null, null, "", Gigs.Here))],
        };
        var gig = Gigs.Gig(first, second) with
        {
            Trucks = [.. Enumerable.Range(1, trucks).Select(truck => new Truck($"Truck {truck}", Given.Of("truck", Gigs.Here), null, null, Gigs.Here))],
        };
        var brief = Gigs.Brief(gig);
        var policies = Policies.Default with { Changeover = times ?? ChangeoverTimes.Default };
        return Planner.Plan(brief with { Company = brief.Company with { Policies = policies } }).Crew.Changeovers;
    }

    private static Given<SetTime> Set(int hour, int minute, int minutes) =>
        Given.Of(new SetTime(Moment.At(hour, 0).Plus(minute), Duration.FromSeconds(minutes * 60)), Gigs.Here);
}
