using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>What cannot be so is not worked with, and breaks nothing.</summary>
public sealed class NonsenseTests
{
    [Theory]
    [InlineData("8 x 5 m", "2 x 0 x 0.1 m")]
    [InlineData("0 x 5 m", "2 x 1 x 0.1 m")]
    [InlineData("0 x 0 m", "0 x 0 x 0 m")]
    public void Decks_and_stages_of_nothing(string stage, string deck)
    {
        var plan = Planner.Plan(SoundGigs.Brief($"stage: {{size: {stage}, height: 0 m, decks: 20 x deck-2x1}}", stock => stock.Replace("size: 2 x 1 x 0.09 m", $"size: {deck}", StringComparison.Ordinal)));
        Assert.True(double.IsFinite(Assert.Single(plan.Stage.Decks).Wanted.Value ?? 0));
        Assert.Contains(plan.Findings, finding => finding.Rule == "stage/decks-do-not-fit");
    }

    [Fact]
    public void A_box_of_no_impedance()
    {
        const string fill = "sound:\n  amplifiers: {AMP: {item: amplifier}}\n  stacks: {Fill: {place: DS 1 m, from-floor-up: [passive], fed-by: AMP out 1}}";
        var plan = Planner.Plan(SoundGigs.Brief(fill, stock => stock.Replace("impedance: 8 ohm", "impedance: 0 ohm", StringComparison.Ordinal)));
        Assert.Null(Assert.Single(plan.Drive.Loads).Impedance.Value);
    }

    [Fact]
    public void A_stack_of_nothing_and_one_of_many_boxes()
    {
        Assert.Empty(SoundGigs.Plan("    Main: {place: DS 1 m, from-floor-up: [], fed-by: DRIVE out 1}").Drive.Boxes);
        Assert.Equal(300, SoundGigs.Plan("    Main: {place: DS 1 m, from-floor-up: [300 x top], fed-by: DRIVE out 1}").Drive.Boxes.Count);
    }

    [Fact]
    public void Stacks_that_feed_themselves()
    {
        var plan = SoundGigs.Plan("    Main: {place: DS 1 m, from-floor-up: [top], fed-by: Main 1 link}\n    Side: {place: DS 2 m, from-floor-up: [top], fed-by: Side 1 link 1}");
        Assert.Equal(["sound/signal-loop"], SoundGigs.Rules(plan, "sound/"));
    }

    [Fact]
    public void Two_devices_of_one_name_are_two_pieces() => Assert.Equal(
        2,
        Planner.Plan(SoundGigs.Brief("sound:\n  consoles: {FOH: {item: desk}}\n  processors: {FOH: {item: processor, fed-by: FOH out 1}}")).Sound.Devices.Select(device => device.Piece.Address).Distinct().Count());
}
