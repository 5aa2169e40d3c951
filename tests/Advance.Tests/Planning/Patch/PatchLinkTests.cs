using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>What is plugged into what.</summary>
public sealed class PatchLinkTests
{
    private static readonly Kind Box = Gigs.Box("box", 8) with { Ports = [Port(PortKind.Input, 8), Port(PortKind.Output, 8)] };
    private static readonly Kind Wedge = Gigs.Kind("wedge", 9) with { Ports = [Port(PortKind.Input, 1), Port(PortKind.Link, 1)] };
    private static readonly Kind WedgeEnd = Gigs.Kind("wedge-end", 9) with { Ports = [Port(PortKind.Input, 1)] };
    private static readonly Kind Ears = Gigs.Kind("ears", 9) with { Ports = [Port(PortKind.Input, 2)] };

    [Fact]
    public void A_radio_plugs_in_with_the_receiver_that_comes_with_it()
    {
        var radio = Gigs.Kind("radio", 1) with { Role = Role.Microphone, With = [new CountedItem(1, "receiver")] };
        var receiver = Gigs.Kind("receiver", 1) with { Ports = [new PortRow(PortKind.Output, 1, "mic-line", "five-pole", "", Gigs.Here)] };
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig(Gigs.Act("Solo", Gigs.Line(1, "radio"))).WithBox("box"), Box, radio, receiver));
        Assert.Equal("Line 1 out five-pole -> SB1 in 1 xlr-3", Assert.Single(Links(plan)));
    }

    [Fact]
    public void Wedges_of_one_mix_are_fed_one_from_the_other() => Assert.Equal(
        ["SB1 out 1 xlr-3 -> Drums 1 in xlr-3", "Drums 1 link xlr-3 -> Drums 2 in xlr-3", "Drums 2 link xlr-3 -> Drums 3 in xlr-3"],
        Links(PlanOf(Mix(1, 1, "Drums", 3, "wedge"))));

    [Fact]
    public void A_wedge_without_a_link_ends_the_chain() =>
        Assert.Equal(["SB1 out 1 xlr-3 -> Drums 1 in xlr-3"], Links(PlanOf(Mix(1, 1, "Drums", 2, "wedge-end"))));

    [Fact]
    public void Stereo_in_ears_take_both_halves() =>
        Assert.Equal(["SB1 out 5 xlr-3 -> Keys in 1 xlr-3", "SB1 out 6 xlr-3 -> Keys in 2 xlr-3"], Links(PlanOf(Mix(5, 6, "Keys", 1, "ears"))));

    [Fact]
    public void In_ears_of_the_act_take_both_halves_too() =>
        Assert.Equal(["SB1 out 5 xlr-3 -> Keys in 1 xlr-3", "SB1 out 6 xlr-3 -> Keys in 2 xlr-3"], Links(PlanOf(Mix(5, 6, "Keys", 1, "own in-ears"))));

    [Fact]
    public void Two_wedges_of_a_stereo_mix_are_left_and_right() =>
        Assert.Equal(["SB1 out 1 xlr-3 -> Front 1 in xlr-3", "SB1 out 2 xlr-3 -> Front 2 in xlr-3"], Links(PlanOf(Mix(1, 2, "Front", 2, "wedge-end"))));

    [Fact]
    public void One_input_takes_one_half_and_the_other_goes_nowhere()
    {
        var plan = PlanOf(Mix(1, 2, "Front", 1, "wedge"));
        Assert.Equal(["SB1 out 1 xlr-3 -> Front in 1 xlr-3"], Links(plan));
        Assert.Contains(plan.Findings, finding => finding.Rule == "patch/mix-not-fed");
    }

    [Fact]
    public void A_pair_sits_side_by_side_and_a_shared_source_stays_where_it_is()
    {
        // Straight would be ports 1 and 2 in the one act and 3 and 4 in the other; the keys are the same keys.
        var (first, second) = (Pair(1, "Keys L/R"), Pair(3, "Keys L/R"));
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig(Gigs.Act("First", first), Gigs.Act("Second", second)).WithBox("box"), Box));
        var ports = plan.Patch.Lines.Select(line => line.Port!.Number!.Value).ToList();
        Assert.Equal([ports[0], ports[0] + 1, ports[0], ports[0] + 1], ports);
    }

    private static InputRow Pair(int channel, string source) => Gigs.Line(channel) with { Channels = new NumberRange(channel, channel + 1), Source = source };

    private static MixRow Mix(int first, int last, string listener, int count, string item) =>
        new(new NumberRange(first, last), listener, Given.Of(new CountedItem(count, item), Gigs.Here), null, null, null, "", Gigs.Here);

    private static Plan PlanOf(MixRow mix) =>
        Planner.Plan(Gigs.Brief(Gigs.Gig(Gigs.Act("Band") with { Mixes = [mix] }).WithBox("box"), Box, Wedge, WedgeEnd, Ears));

    private static IEnumerable<string> Links(Plan plan) =>
        plan.Patch.Links.Select(link => $"{link.From.Port} {link.From.Connector} -> {link.To.Port} {link.To.Connector}");

    private static PortRow Port(PortKind kind, int count) => new(kind, count, "mic-line", "xlr-3", "", Gigs.Here);
}
