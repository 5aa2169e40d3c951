using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

public sealed class DriveTests
{
    /// <summary>A small stack is linked from box to box: in of the first, link to in of the next (common practice, no source).</summary>
    [Fact]
    public void The_sample_runs_from_desk_to_box_and_from_box_to_box()
    {
        var plan = Planner.Plan(SoundGigs.Sample);
        var top = plan.Drive.Of(Address.Read("sound/Main SL/3"))!;
        Assert.Equal(PathEnd.Desk, top.Path.End);
        Assert.Equal(
            ["SB1 out 16 > DRIVE in 2", "DRIVE out 2 > Main SL 1 in", "Main SL 1 link > Main SL 2 in", "Main SL 2 link > Main SL 3 in"],
            top.Path.Links.Select(link => $"{link.From.Port} > {link.To.Port}"));
        Assert.All(top.Path.Links, link => Assert.Equal(("mic-line", "xlr-3", "xlr-3"), (link.Carries, link.From.Connector, link.To.Connector)));
    }

    [Fact]
    public void A_link_is_on_the_backbone_once()
    {
        var links = Planner.Plan(SoundGigs.Sample).Links.Where(link => link.Carries != "mains" && link.To.Port.Device.StartsWith("Main", StringComparison.Ordinal)).ToList();
        Assert.Equal(6, links.Count);
        Assert.Equal(6, links.Select(link => link.Address).Distinct().Count());
    }

    // 0.60 m and 0.55 m high, the connector in the middle of the back: 0.30, 0.60 + 0.275, 1.15 + 0.275.
    [Fact]
    public void A_lead_goes_up_to_the_box()
    {
        var plan = Planner.Plan(SoundGigs.Sample);
        var heights = plan.Drive.Boxes.Where(box => box.Stack.Name == "Main SR").Select(box => box.In!.To.Height);
        Assert.Equal([0.3, 0.875, 1.425], heights.Select(height => Math.Round(height, 6, MidpointRounding.AwayFromZero)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void A_chain_of_boxes_has_one_link_less_than_boxes(int boxes)
    {
        var plan = SoundGigs.Plan(SoundGigs.Both($"{boxes} x top"));
        Assert.Equal(2 * (boxes - 1), plan.Drive.Links.Count);
        Assert.Equal(2, plan.Sound.Links.Count(link => link.From.Port.Device == "DRIVE"));
    }

    [Fact]
    public void Each_side_gets_the_processors_input_of_that_side()
    {
        var plan = Planner.Plan(SoundGigs.Sample);
        Assert.Equal(["DRIVE in 1", "DRIVE in 2"], plan.Drive.Outputs.Select(output => Assert.Single(output.From).ToString()));
    }

    [Fact]
    public void A_stack_in_the_middle_gets_both_inputs_and_a_mono_output_drives_both_sides()
    {
        var plan = SoundGigs.Plan(SoundGigs.Both("top").Replace("DRIVE out 1-2", "DRIVE out 4", StringComparison.Ordinal) + "\n    Centre: {place: DS 0.5 m, from-floor-up: [sub-full], fed-by: DRIVE out 3}");
        Assert.Equal(["DRIVE out 3 from 2", "DRIVE out 4 from 2"], plan.Drive.Outputs.Select(output => $"{output.Port} from {output.From.Count}"));
        Assert.Equal(["Main SR", "Main SL"], plan.Drive.Outputs[1].Stacks.Select(stack => stack.Name));
    }

    [Fact]
    public void An_output_that_is_left_open_is_the_next_free_one_and_stays_when_another_stack_comes_before()
    {
        var first = SoundGigs.Both("top").Replace("DRIVE out 1-2", "DRIVE", StringComparison.Ordinal);
        var issued = SoundGigs.Plan(first);
        var next = SoundGigs.Plan("    Centre: {place: DS 0.5 m, from-floor-up: [sub-full], fed-by: DRIVE}\n" + first, earlier: issued.Chosen);
        Assert.Equal(["DRIVE out 1", "DRIVE out 2"], issued.Drive.Outputs.Select(output => output.Port.ToString()));
        Assert.Equal("DRIVE out 3", next.Drive.Of(Address.Read("sound/Centre/1"))!.In!.From.Port.ToString());
        Assert.Equal("DRIVE out 1", next.Drive.Of(Address.Read("sound/Main SR/1"))!.In!.From.Port.ToString());
    }

    [Fact]
    public void What_is_written_for_an_output_is_obeyed_and_says_so()
    {
        var chain = SoundGigs.Chain.Replace("fed-by: SB1", "outputs: [{output: 2, gain: -3 dB, polarity: reversed, delay: 4 ms}], fed-by: SB1", StringComparison.Ordinal);
        var set = SoundGigs.Plan(SoundGigs.Both("top"), chain).Drive.Outputs[1].Set;
        Assert.Equal((-3, 0.004, Polarity.Reversed), (set.Gain.Value!.Value.Decibels, Math.Round(set.Delay.Value!.Value.Seconds, 9, MidpointRounding.AwayFromZero), set.Polarity.Value));
        Assert.All(new[] { set.Gain.Why, set.Delay.Why, set.Polarity.Why }, why => Assert.IsType<Reason.Fixed>(why));
        Assert.Equal(new Reason.Policy("start-muted"), set.StartsMuted!.Why);
    }

    /// <summary>Two boxes that are paired throw symmetrically (common practice, no source).</summary>
    [Fact]
    public void A_pair_throws_symmetrically_whatever_its_aim() => Gen.Int[-10, 10].Sample(
        degrees =>
        {
            var boxes = SoundGigs.Plan(SoundGigs.Both("sub, top, top upside-down", $"electronic-aim: {degrees} deg")).Drive.Boxes.Where(box => box.Stack.Side is Advance.Domain.Places.Side.StageRight).ToList();
            Assert.Null(boxes[0].Set.Aim);
            Assert.Equal(degrees, boxes[1].Throw!.Value!.Value.Degrees);
            Assert.Equal(0, boxes[1].Throw!.Value!.Value.Degrees + boxes[2].Throw!.Value!.Value.Degrees);
        },
        iter: 30);

    [Fact]
    public void An_open_question_about_what_feeds_a_stack_is_carried_along()
    {
        var plan = SoundGigs.Plan(SoundGigs.Both("top, top upside-down").Replace("DRIVE out 1-2", "DRIVE out 1-2 TBC Sam by 4 Sep", StringComparison.Ordinal));
        Assert.All(plan.Drive.Boxes, box => Assert.Contains(box.Path.RestsOn, doubt => doubt.Who == "Sam"));
    }

    // Parallel impedances: 8 and 8 are 4, three are 2.67, four are 2 ohm (Ohm's law).
    [Theory]
    [InlineData(1, 8)]
    [InlineData(2, 4)]
    [InlineData(3, 2.6666667)]
    [InlineData(4, 2)]
    public void Boxes_on_one_channel_are_in_parallel(int boxes, double ohms)
    {
        var stacks = $"    Fill: {{place: DS 0.2 m, from-floor-up: [{boxes} x passive], fed-by: AMP out 1}}";
        var load = Assert.Single(SoundGigs.Plan(stacks, SoundGigs.Chain + "\n  amplifiers: {AMP: {item: amplifier, fed-by: DRIVE out 5-6}}").Drive.Loads);
        Assert.Equal(ohms, load.Impedance.Value!.Value.Ohms, 6);
        Assert.Equal(ohms >= 4 ? Verdict.Holds : Verdict.Fails, load.Impedance.AtLeast(load.Least));
    }
}
