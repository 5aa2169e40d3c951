using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Planning;
using CsCheck;

namespace Advance.Tests.Planning;

public sealed class PatchTests
{
    private static readonly Gen<int[]> Channels = Gen.Int[1, 20].Array[0, 8].Select(channels => channels.Distinct().ToArray());

    private static readonly Gen<Brief> Briefs = Gen.Select(Channels, Channels, Channels, Gen.Int[0, 12], Gen.Int[0, 12], Brief);

    [Fact]
    public void A_straight_patch_is_straight()
    {
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig(Gigs.Act("Trio", Gigs.Line(3), Gigs.Line(1), Gigs.Line(2))).WithBox("box"), Gigs.Box("box", 8)));
        Assert.Equal(["SB1 in 1", "SB1 in 2", "SB1 in 3"], plan.Patch.Lines.Select(line => line.Port!.ToString()));
    }

    [Fact]
    public void Two_boxes_are_one_row_of_ports()
    {
        var gig = Gigs.Gig(Gigs.Act("Trio", Gigs.Line(4), Gigs.Line(5), Gigs.Line(9))).WithBox("box").WithBox("box");
        var plan = Planner.Plan(Gigs.Brief(gig, Gigs.Box("box", 4)));
        Assert.Equal(["SB1 in 4", "SB2 in 1", "SB1 in 1"], plan.Patch.Lines.Select(line => line.Port!.ToString()));
    }

    [Fact]
    public void A_fixed_port_is_obeyed_and_the_line_of_that_number_makes_way()
    {
        var act = Gigs.Act("Duo", Gigs.Line(1), Gigs.Line(2, port: new PortRange("SB1", PortKind.Input, new NumberRange(1, 1))));
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig(act).WithBox("box"), Gigs.Box("box", 4)));
        Assert.Equal(["SB1 in 2", "SB1 in 1"], plan.Patch.Lines.Select(line => line.Port!.ToString()));
    }

    [Fact]
    public void While_one_act_plays_no_port_is_used_twice() => Briefs.Sample(brief =>
    {
        var lines = Planner.Plan(brief).Patch.Lines;
        foreach (var act in brief.Gig.Acts)
        {
            var live = lines.Where(line => (line.Act is null || line.Act == act.Name) && line.Port is not null).ToList();
            Assert.Equal(live.Count, live.Select(line => line.Port).Distinct().Count());
        }
    });

    [Fact]
    public void A_line_is_without_a_port_only_when_all_are_taken() => Briefs.Sample(brief =>
    {
        var plan = Planner.Plan(brief);
        foreach (var act in brief.Gig.Acts)
        {
            var live = plan.Patch.Lines.Where(line => line.Act is null || line.Act == act.Name).ToList();
            Assert.Equal(Math.Min(live.Count, plan.Patch.Ports.Value!.Value), live.Count(line => line.Port is not null));
        }
    });

    [Fact]
    public void One_more_line_moves_no_other_once_a_plan_was_issued() => Gen.Select(Briefs, Gen.Int[1, 40], Gen.Bool).Sample((brief, channel, isForAll) =>
    {
        var issued = Planner.Plan(brief);
        if (issued.Patch.Lines.Any(line => line.Channel == channel))
        {
            return;
        }

        // A line for every act needs a port that every act has free; where there is none, having ports goes before keeping them.
        if (isForAll && issued.Patch.Lines.Select(line => line.Port).OfType<Port>().Distinct().Count() == issued.Patch.Ports.Value)
        {
            return;
        }

        var ports = Planner.Plan(brief with { Gig = WithLine(brief.Gig, channel, isForAll) }, issued.Chosen).Patch.Lines.ToDictionary(line => line.Address, line => line.Port);
        Assert.All(issued.Patch.Lines.Where(line => line.Port is not null), line => Assert.Equal(line.Port, ports[line.Address]));
    });

    [Fact]
    public void A_line_for_every_act_gets_a_port_even_where_that_moves_one_that_was_issued()
    {
        var (first, second) = (Gigs.Act("First", Gigs.Line(1)), Gigs.Act("Second", Gigs.Line(2)));
        var gig = Gigs.Gig(first, second).WithBox("box");
        var issued = Planner.Plan(Gigs.Brief(gig, Gigs.Box("box", 2)));
        var next = Planner.Plan(Gigs.Brief(gig with { Sound = gig.Sound with { AlwaysLive = [Gigs.Line(3)] } }, Gigs.Box("box", 2)), issued.Chosen);
        Assert.All(next.Patch.Lines, line => Assert.NotNull(line.Port));
    }

    [Fact]
    public void A_new_line_of_a_low_number_does_not_take_the_port_that_another_was_issued_with()
    {
        // Channel 9 has no port of its own number on a box of four, so it was issued with the first one.
        var issued = Planner.Plan(Gigs.Brief(Gigs.Gig(Gigs.Act("Duo", Gigs.Line(9))).WithBox("box"), Gigs.Box("box", 4)));
        var next = Planner.Plan(Gigs.Brief(Gigs.Gig(Gigs.Act("Duo", Gigs.Line(1), Gigs.Line(9))).WithBox("box"), Gigs.Box("box", 4)), issued.Chosen);
        Assert.Equal(["1 SB1 in 2", "9 SB1 in 1"], next.Patch.Lines.Select(line => $"{line.Channel} {line.Port}"));
    }

    [Fact]
    public void The_order_in_which_rows_are_written_does_not_matter() => Gen.Select(Briefs, Gen.Int[0, 1000]).Sample((brief, seed) =>
    {
        var acts = brief.Gig.Acts.Select(act => act with { Inputs = [.. act.Inputs.OrderBy(row => (row.Channels.First * 7919) ^ seed)] }).ToList();
        var shuffled = brief with { Gig = brief.Gig with { Acts = acts } };
        Assert.Equal(Ports(Planner.Plan(brief)), Ports(Planner.Plan(shuffled)));
    });

    private static Gig WithLine(Gig gig, int channel, bool isForAll) => isForAll
        ? gig with { Sound = gig.Sound with { AlwaysLive = [Line(channel), .. gig.Sound.AlwaysLive] } }
        : gig with { Acts = [gig.Acts[0] with { Inputs = [Line(channel), .. gig.Acts[0].Inputs] }, .. gig.Acts.Skip(1)] };

    private static IEnumerable<string> Ports(Plan plan) => plan.Patch.Lines.Select(line => $"{line.Address} {line.Port}");

    private static Brief Brief(int[] first, int[] second, int[] always, int ports, int more)
    {
        var taken = first.Concat(second).ToHashSet();
        var gig = Gigs.Gig(Gigs.Act("First", [.. first.Select(Line)]), Gigs.Act("Second", [.. second.Select(Line)])).WithBox("box").WithBox("other");
        gig = gig with { Sound = gig.Sound with { AlwaysLive = [.. always.Where(channel => !taken.Contains(channel)).Select(Line)] } };
        return Gigs.Brief(gig, Gigs.Box("box", ports), Gigs.Box("other", more));
    }

    private static InputRow Line(int channel) => Gigs.Line(channel);
}
