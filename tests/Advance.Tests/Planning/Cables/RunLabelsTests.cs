using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Planning;

namespace Advance.Tests.Planning;

public sealed class RunLabelsTests
{
    private static readonly Gig Gig = CableGigs.OnDeck() with
    {
        Sound = Sound.None with { StageBoxes = [new Device("SB1", Given.Of("box", Gigs.Here), null, null, null, null, Gigs.Here)] },
        Power = new([new Device("PD1", Given.Of("distro", Gigs.Here), null, null, null, null, Gigs.Here)], [], []),
    };

    [Fact]
    public void A_line_is_called_after_its_input_and_a_return_after_its_output() =>
        Assert.Equal(["DRIVE-1", "SB1-12", "SB1-out-3"], Labels(
            CableGigs.Mic(12, 0, 0),
            Link("mix", ("SB1", PortKind.Output, 3), ("Drums", PortKind.Input, null), "mic-line"),
            Link("drive", ("SB1", PortKind.Output, 15), ("DRIVE", PortKind.Input, 1), "mic-line")));

    [Fact]
    public void A_circuit_is_called_after_its_outlet_and_what_is_linked_on_has_its_place_in_the_chain() =>
        Assert.Equal(["PD1-3", "PD1-3-2", "PD1-3-3", "PD1-feed"], Labels(
            Link("c", ("top", PortKind.Link, null), ("upper top", PortKind.Input, null), "mains"),
            Link("b", ("sub", PortKind.Link, null), ("top", PortKind.Input, null), "mains"),
            Link("a", ("PD1", PortKind.Outlet, 3), ("sub", PortKind.Input, null), "mains"),
            Link("feed", ("A", PortKind.Outlet, null), ("PD1", PortKind.Input, null), "mains")));

    [Fact]
    public void A_network_lead_is_called_after_both_its_ends() =>
        Assert.Equal(["SB1-FOH"], Labels(Link("net", ("SB1", PortKind.Link, null), ("FOH", PortKind.Link, null), "network")));

    [Fact]
    public void Two_of_one_name_are_told_apart_and_a_ring_ends() =>
        Assert.Equal(["A-B", "A-Bb", "B-A"], Labels(
            Link("1", ("A", PortKind.Link, null), ("B", PortKind.Link, null), "lighting-control"),
            Link("2", ("A", PortKind.Link, null), ("B", PortKind.Link, null), "lighting-control"),
            Link("3", ("B", PortKind.Link, null), ("A", PortKind.Link, null), "lighting-control")));

    [Fact]
    public void Act_after_act_uses_the_same_lead_at_a_port_of_a_stage_box_and_it_reaches_for_each()
    {
        Link near = CableGigs.Mic(1, -2, 4) with { Act = "First" }, far = CableGigs.Mic(1, 3, 4) with { Act = "Second" };
        far = far with { Address = Address.Of("link") / "far" };
        var plan = CableGigs.Plan(Gig, [near, far], [CableGigs.Mic(5), CableGigs.Mic(20)]);
        var run = Assert.Single(plan.Runs);
        Assert.Equal(("SB1-1", "mic-20", far), (run.Label, Assert.Single(run.Leads).Id, run.Link));
        Assert.Single(plan.Pieces);
        Assert.Same(run, plan.Of(near.Address));
        Assert.Same(run, plan.Of(far.Address));
        Assert.Null(plan.Of(Address.Of("link") / "other"));
    }

    [Fact]
    public void What_is_up_at_the_same_time_has_leads_of_its_own()
    {
        Link one = CableGigs.Mic(1, -2, 4) with { Act = "First" };
        Link other = one with { Address = Address.Of("link") / "other" };
        Assert.Equal(["SB1-1", "SB1-1b"], CableGigs.Plan(Gig, [one, other], []).Runs.Select(run => run.Label));
        Assert.Equal(2, CableGigs.Plan(Gig, [one, other with { Act = null }], []).Runs.Count);
    }

    private static IReadOnlyList<string> Labels(params Link[] links) => [.. CableGigs.Plan(Gig, links, []).Runs.Select(run => run.Label)];

    private static Link Link(string name, (string Device, PortKind Kind, int? Number) from, (string Device, PortKind Kind, int? Number) to, string carries) =>
        CableGigs.Link(name, CableGigs.End(from.Device, from.Kind, from.Number, "x", 0, 0), CableGigs.End(to.Device, to.Kind, to.Number, "x", 0, 0), carries);
}
