using Advance.Domain.Stocks;

namespace Advance.Tests.Planning;

/// <summary>
/// One place between a sub and its tops crosses, and one only. A sub's link hands on either the full or the high-passed signal; where it is
/// high-passed, nothing upstream crosses again (common practice, no source).
/// </summary>
public sealed class CrossingTests
{
    private const string Processor = "crossover: 100 Hz in DRIVE";
    private const string ByHand = "outputs: [{output: 1-2, high-pass: 100 Hz}], ";

    [Theory]
    [InlineData("sub", "crossover: 100 Hz in sub", false, "")]
    [InlineData("sub", "", false, "")]
    [InlineData("sub", Processor, false, "sound/crossed-twice")]
    [InlineData("sub", "crossover: 100 Hz in sub", true, "sound/crossed-twice")]
    [InlineData("sub-full", "crossover: 100 Hz in sub-full", false, "sound/not-crossed")]
    [InlineData("sub-full", "", false, "sound/not-crossed")]
    [InlineData("sub-full", Processor, false, "sound/not-crossed")]
    [InlineData("sub-full", "crossover: 100 Hz in sub-full", true, "sound/crossed-twice")]
    public void A_sub_and_its_top_on_one_output(string sub, string crossover, bool isAlsoByHand, string rule)
    {
        var chain = isAlsoByHand ? SoundGigs.Chain.Replace("fed-by: SB1", $"{ByHand}fed-by: SB1", StringComparison.Ordinal) : SoundGigs.Chain;
        var plan = SoundGigs.Plan(SoundGigs.Both($"{sub}, top", crossover), chain);
        Assert.Equal(rule, string.Join(" ", SoundGigs.Rules(plan, "sound/")));
    }

    [Theory]
    [InlineData("sub-full", Processor, "")]
    [InlineData("sub-full", "", "sound/not-crossed")]
    [InlineData("sub-full", "crossover: 100 Hz in sub-full", "sound/not-crossed")]
    [InlineData("sub", Processor, "sound/crossed-twice")]
    public void Tops_on_outputs_of_their_own(string sub, string crossover, string rule)
    {
        var plan = SoundGigs.Plan(SoundGigs.Both($"{sub}, top", $"tops-fed-by: DRIVE out 3-4\n      {crossover}"));
        Assert.Equal(rule, string.Join(" ", SoundGigs.Rules(plan, "sound/")));
    }

    [Fact]
    public void A_processor_that_crosses_takes_the_highs_from_the_subs_and_the_lows_from_the_tops()
    {
        var plan = SoundGigs.Plan(SoundGigs.Both("sub-full, top", $"tops-fed-by: DRIVE out 3-4\n      {Processor}"));
        var outputs = plan.Drive.Outputs.Select(output => $"{output.Port} high-pass {output.Set.HighPass?.Value?.Hertz} low-pass {output.Set.LowPass?.Value?.Hertz}");
        Assert.Equal(
            ["DRIVE out 1 high-pass  low-pass 100", "DRIVE out 2 high-pass  low-pass 100", "DRIVE out 3 high-pass 100 low-pass ", "DRIVE out 4 high-pass 100 low-pass "],
            outputs);
        Assert.All(plan.Drive.Boxes, box => Assert.True(box.Set is { HighPass: null, LowPass: null }));
    }

    [Fact]
    public void A_sub_that_crosses_leaves_the_processor_at_full_range()
    {
        var plan = SoundGigs.Plan(SoundGigs.Both("sub, top", "crossover: 100 Hz in sub"));
        Assert.All(plan.Drive.Outputs, output => Assert.True(output.Set is { HighPass: null, LowPass: null }));
        Assert.Equal(100, plan.Drive.Boxes[0].Set.LowPass!.Value!.Value.Hertz);
        Assert.Equal([("sub", Filter.HighPass)], plan.Drive.Boxes[1].Crossings.Select(crossing => (crossing.By, crossing.Filter)));
    }

    [Fact]
    public void A_top_in_the_same_stock_that_nobody_crosses_is_not_asked_about() =>
        Assert.Empty(SoundGigs.Rules(SoundGigs.Plan(SoundGigs.Both("top, top upside-down")), "sound/"));
}
