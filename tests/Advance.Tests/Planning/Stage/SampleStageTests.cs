using Advance.Domain.Figures;
using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>The stage of the sample gig: 8 x 5 m, 0.6 m high, no rails, and things on it and around it.</summary>
public sealed class SampleStageTests
{
    private static readonly Lazy<Plan> Planned = new(() => Planner.Plan(SoundGigs.Sample));

    [Theory]
    [InlineData("stage/drums", Footing.Deck, 0.6)]
    [InlineData("stage/The Threshers/bass amp", Footing.Deck, 0.6)]
    [InlineData("stage/FOH table", Footing.Floor, 0)]
    [InlineData("stage/dance floor", Footing.Floor, 0)]
    [InlineData("sound/Main SR", Footing.Floor, 0)]
    [InlineData("sound/DRIVE", Footing.Deck, 0.6)]
    [InlineData("power/PD1", Footing.Deck, 0.6)]
    [InlineData("lighting/LX SL", Footing.Floor, 0)]
    public void A_thing_stands_on_the_deck_or_on_the_floor(string address, Footing footing, double height)
    {
        var plan = Planned.Value;
        var thing = plan.Stage.Things.Concat(plan.Sound.Things).Concat(plan.Power.Things).Concat(plan.Lighting.Things).Single(thing => thing.Address.Text == address);
        Assert.Equal((footing, height), (thing.On, thing.Base.Value!.Value.Meters));
    }

    [Fact]
    public void Its_edges_are_the_audiences_and_three_open_ones() => Assert.Equal(
        ["stage/front edge Audience", "stage/rear edge Open", "stage/SR edge Open", "stage/SL edge Open"],
        Planned.Value.Stage.Edges.Select(edge => $"{edge.Address} {edge.State}"));

    [Fact]
    public void Its_steps_lead_up_over_the_edge_they_stand_at_and_are_turned_along_it()
    {
        Assert.Equal(["SL edge"], Planned.Value.Stage.Edges.Where(edge => edge.Steps.Count > 0).Select(edge => edge.Name));
        Assert.Equal(90, Planned.Value.Stage.Things.Single(thing => thing.Look == Look.Steps).Turn);
    }

    [Fact]
    public void Its_twenty_decks_make_it()
    {
        var decks = Assert.Single(Planned.Value.Stage.Decks);
        Assert.Equal((20, 20, true), (decks.Decks.Count, decks.Wanted.Value, decks.CanFill));
    }

    [Fact]
    public void An_open_edge_is_accepted_under_its_address_and_its_height()
    {
        var finding = Planned.Value.Findings.Single(finding => finding.Rule == "stage/edge-open" && finding.Where == Address.Read("stage/rear edge"));
        Assert.Equal("0.6 m", finding.Figures!.ToString());
    }

    [Fact]
    public void Nothing_of_it_straddles_and_every_place_is_known() =>
        Assert.DoesNotContain(Planned.Value.Findings, finding => finding.Rule is "stage/straddles" or "stage/place-unknown" or "stage/decks-do-not-fit");

    [Fact]
    public void Without_a_stage_everything_stands_on_the_floor()
    {
        var plan = SoundGigs.Plan(SoundGigs.Both("top"));
        Assert.All(plan.Sound.Things, thing => Assert.Equal(Footing.Floor, thing.On));
    }

    [Fact]
    public void On_a_stage_of_unknown_size_nobody_knows_what_a_thing_stands_on()
    {
        var plan = SoundGigs.Plan(SoundGigs.Both("top"), more: "stage: {size: TBC venue by 4 Sep, height: 0.6 m}");
        Assert.All(plan.Sound.Stacks, stack => Assert.Equal((Footing.Unknown, null), (stack.On, stack.Top.Value)));
        Assert.All(plan.Sound.Stacks, stack => Assert.Contains(stack.Top.RestsOn, doubt => doubt.Who == "venue"));
    }
}
