using Advance.Domain.Figures;

namespace Advance.Tests.Planning;

public sealed class TimingTests
{
    /// <summary>
    /// 343.20358 m/s at 68 °F, 351.87462 at 35 °C and 335.41762 at 280 K (hpmuseum.org, thread 21581), worked from the gas constant there,
    /// which makes 331.29 at 0 °C where 331.3 is usual: 0.02 m/s apart at most.
    /// </summary>
    [Theory]
    [InlineData("68 F", 343.20358)]
    [InlineData("20 C", 343.20358)]
    [InlineData("35 C", 351.87462)]
    [InlineData("6.85 C", 335.41762)]
    public void The_speed_of_sound_is_that_of_the_night(string temperature, double metresPerSecond) =>
        Assert.Equal(metresPerSecond, Speed(temperature), 0.02);

    /// <summary>The usual round figures: 331.3 m/s at 0 °C, 343.2 at 20 °C.</summary>
    [Theory]
    [InlineData("0 C", 331.3)]
    [InlineData("20 C", 343.2)]
    public void The_speed_of_sound_is_what_is_usually_said(string temperature, double metresPerSecond) =>
        Assert.Equal(metresPerSecond, Speed(temperature), 0.05);

    private static double Speed(string temperature) =>
        SoundGigs.Plan(SoundGigs.Both("top"), more: $"temperature: {temperature}").Drive.SpeedOfSound.Value!.Value.MetersPerSecond;

    [Fact]
    public void Without_a_temperature_it_is_the_companys_and_an_open_one_is_carried_along()
    {
        var usual = SoundGigs.Plan(SoundGigs.Both("top")).Drive.SpeedOfSound;
        Assert.Equal(new Reason.Policy("temperature"), Assert.Single(usual.How!.Inputs).Why);
        Assert.False(usual.RestsOn.Any);

        var open = SoundGigs.Plan(SoundGigs.Both("top"), more: "temperature: TBC venue by 4 Sep").Drive.SpeedOfSound;
        Assert.Equal(usual.Value, open.Value);
        Assert.Equal("venue", Assert.Single(open.RestsOn).Who);
    }

    /// <summary>30 m are 87.4 ms and 10 m are 29.1 ms at 20 °C (343.2 m/s); the delay stack starts 10 ms later still, by policy.</summary>
    [Theory]
    [InlineData("DS 30.4 m", 87.41 + 10)]
    [InlineData("DS 10.4 m", 29.14 + 10)]
    public void A_delay_stack_waits_for_the_sound_from_the_stage(string place, double milliseconds)
    {
        var plan = SoundGigs.Plan($"""
                Main: {"{"}place: DS 0.4 m, from-floor-up: [top], fed-by: DRIVE out 1{"}"}
                Late: {"{"}place: {place}, from-floor-up: [top], delay-of: Main, fed-by: DRIVE out 2{"}"}
            """);
        Assert.Equal(0, plan.Drive.Outputs[0].Set.Delay.Value!.Value.Seconds);
        Assert.Equal(milliseconds, plan.Drive.Outputs[1].Set.Delay.Value!.Value.Milliseconds, 0.01);
        Assert.Equal("Main", plan.Drive.Outputs[1].Set.DelayFrom);
        Assert.Null(plan.Drive.Outputs[0].Set.DelayWay);
        Assert.Equal(milliseconds / 1000 * 343.2, plan.Drive.Outputs[1].Set.DelayWay!.Value!.Value.Meters, 0.01);
        Assert.Equal(0, plan.Drive.Boxes[1].Set.Delay.Value!.Value.Seconds);
    }

    // Heard 4 m in front of the fill and 5 m from the main stack (a triangle of 3, 4 and 5): 1 m is 2.91 ms, and 5 ms more by policy.
    [Fact]
    public void A_fill_is_timed_where_it_is_heard()
    {
        var plan = SoundGigs.Plan("""
                Main: {place: SR 3 m, from-floor-up: [top], fed-by: DRIVE out 1}
                Fill: {place: centre, from-floor-up: [top], fill-of: Main, heard-at: DS 4 m, fed-by: DRIVE out 2}
            """, more: "stage: {size: 8 x 0.000001 m, height: 0 m}");
        Assert.Equal(2.914 + 5, plan.Drive.Outputs[1].Set.Delay.Value!.Value.Milliseconds, 0.01);
    }

    [Fact]
    public void Of_a_mirrored_pair_each_is_timed_from_its_own_side()
    {
        var plan = SoundGigs.Plan(SoundGigs.Both("top") + "\n    Side: {sides: SL SR, place: 4.6 m off centre DS 20.4 m, from-floor-up: [top], delay-of: Main, fed-by: DRIVE out 3-4}");
        Assert.Equal(["Main SL", "Main SR"], plan.Drive.Outputs.Skip(2).Select(output => output.Set.DelayFrom));
    }

    [Fact]
    public void Where_the_processor_cannot_delay_the_box_does()
    {
        var chain = SoundGigs.Chain.Replace("item: processor,", "item: processor-low,", StringComparison.Ordinal);
        var plan = SoundGigs.Plan(SoundGigs.Both("top", "delay: 12 ms"), chain);
        Assert.All(plan.Drive.Outputs, output => Assert.Equal(0, output.Set.Delay.Value!.Value.Seconds));
        Assert.All(plan.Drive.Boxes, box => Assert.Equal(12, box.Set.Delay.Value!.Value.Milliseconds, 6));
    }

    [Fact]
    public void Two_stacks_on_one_output_that_want_different_delays_set_them_on_their_boxes()
    {
        var plan = SoundGigs.Plan("""
                Main: {place: DS 0.4 m, from-floor-up: [top], fed-by: DRIVE out 1}
                Late: {place: DS 10.4 m, from-floor-up: [top], delay-of: Main, fed-by: DRIVE out 1}
            """);
        Assert.Equal(0, Assert.Single(plan.Drive.Outputs).Set.Delay.Value!.Value.Seconds);
        Assert.Equal([0, 39], plan.Drive.Boxes.Select(box => Math.Round(box.Set.Delay.Value!.Value.Milliseconds, MidpointRounding.AwayFromZero)));
    }

    /// <summary>Gradient pair: the rear unit is delayed by its spacing over c and inverted; 0.7 m are 2.04 ms at 343.2 m/s (as 1 m are 2.91 ms).</summary>
    [Fact]
    public void A_rear_facing_box_is_late_by_its_depth_and_reversed()
    {
        var own = SoundGigs.Plan(SoundGigs.Both("sub-plain, sub-plain rear-facing", "rear-fed-by: DRIVE out 3-4"));
        var rear = own.Drive.Outputs.Single(output => output.Port.Number == 3);
        Assert.Equal(0.7 * 2.914, rear.Set.Delay.Value!.Value.Milliseconds, 0.001);
        Assert.Equal(("Reversed", "Normal"), (rear.Set.Polarity.Value.ToString(), own.Drive.Boxes[1].Set.Polarity.Value.ToString()));

        var linked = SoundGigs.Plan(SoundGigs.Both("sub-full, sub-full rear-facing")).Drive.Boxes[1];
        Assert.Equal(0.7 * 2.914, linked.Set.Delay.Value!.Value.Milliseconds, 0.001);
        Assert.Equal(("Normal", "Reversed"), (linked.Output!.Set.Polarity.Value.ToString(), linked.Set.Polarity.Value.ToString()));
    }

    /// <summary>A spacing of 1.0 m is a quarter of the wave of 85.8 Hz at 343.2 m/s; a box of 0.7 m, then, that of 122.6 Hz.</summary>
    [Fact]
    public void A_rear_facing_box_cancels_best_where_its_depth_is_a_quarter_wave()
    {
        var box = SoundGigs.Plan(SoundGigs.Both("sub-full, sub-full rear-facing")).Drive.Boxes[1];
        Assert.Equal(85.8 / 0.7, box.QuarterWave!.Value!.Value.Hertz, 0.05);
    }

    [Theory]
    [InlineData("-300 C")]
    [InlineData("-273.15 C")]
    public void Where_nothing_can_sound_nothing_is_timed(string temperature)
    {
        var plan = SoundGigs.Plan(SoundGigs.Both("sub-full, sub-full rear-facing"), more: $"temperature: {temperature}");
        Assert.Null(plan.Drive.SpeedOfSound.Value);
        Assert.Null(plan.Drive.Boxes[1].Set.Delay.Value);
        Assert.Contains("sound/rear-box-not-set", SoundGigs.Rules(plan, "sound/"));
    }

    [Fact]
    public void A_delay_whose_way_is_unknown_is_unknown_and_not_nought()
    {
        var plan = SoundGigs.Plan("""
                Main: {place: DS 0.4 m, from-floor-up: [top], fed-by: DRIVE out 1}
                Late: {place: TBC venue by 4 Sep, from-floor-up: [top], delay-of: Main, fed-by: DRIVE out 2}
            """);
        Assert.Null(plan.Drive.Outputs[1].Set.Delay.Value);
        Assert.Contains(plan.Drive.Outputs[1].Set.Delay.RestsOn, doubt => doubt.Who == "venue");
    }
}
