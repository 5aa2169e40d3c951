using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Planning;

namespace Advance.Tests.Planning;

public sealed class CableDepartmentTests
{
    private static readonly Kind[] Shelf = [CableGigs.Mic(5, 3), CableGigs.Mic(10, 3), CableGigs.Mains(10), CableGigs.ToLocking(5), CableGigs.ToLocking(10), CableGigs.LinkLead(2)];

    [Fact]
    public void Each_lead_is_a_piece_of_the_shops_that_says_which_link_needs_it()
    {
        var link = CableGigs.Mic(1, -2, 3);
        var piece = Assert.Single(CableGigs.Plan(CableGigs.OnDeck(), [link], Shelf).Pieces);
        Assert.Equal(("cable/SB1-1/mic-10", "SB1-1", "mic-10", true), (piece.Address.Text, piece.Name, piece.Item, piece.IsPulled));
        Assert.Equal(new Need.Connects(link.Address, link.At), piece.Why);
    }

    [Fact]
    public void A_run_of_two_leads_has_two_pieces_one_join_and_its_figures_under_its_label()
    {
        var plan = CableGigs.Plan(CableGigs.OnDeck(), [CableGigs.Circuit(3, 4.5, -3)], [CableGigs.Mains(10), CableGigs.ToLocking(5)]);
        var run = Assert.Single(plan.Runs);
        Assert.Equal(["mains-10", "locking-5"], run.Leads.Select(lead => lead.Id));
        Assert.Equal((1, 15), (run.Joins, run.MadeUp.Value!.Value.Meters));
        Assert.Equal(["cable/PD1-3/mains-10", "cable/PD1-3/locking-5"], plan.Pieces.Select(piece => piece.Address.Text));
        Assert.Equal(["cable/PD1-3/needed", "cable/PD1-3/made-up", "cable/PD1-3/surplus"], plan.Figures.Select(stated => stated.Address.Text));
        Assert.Equal(run.MadeUp.Value.Value.Meters - run.Needed.Value!.Value.Meters, run.Surplus.Value!.Value.Meters, 9);
        Assert.Equal("mains-10 + locking-5", plan.Chosen.Of(run.Address));
    }

    [Fact]
    public void What_is_out_for_repair_or_goes_with_something_else_is_not_there_and_what_is_hired_is()
    {
        Kind five = CableGigs.Mic(5, 3) with { OutForRepair = 1 }, ten = CableGigs.Mic(10, 1);
        var elsewhere = Piece("extras", five, null);
        IReadOnlyList<Link> links = [CableGigs.Mic(1, -3, 4), CableGigs.Mic(2, -3, 4), CableGigs.Mic(3, -3, 4)];
        Assert.Equal(["SB1-1: mic-5", "SB1-2: mic-10", "SB1-3: "], CableGigs.Made(CableGigs.Plan(CableGigs.OnDeck(), links, [five, ten], pieces: [elsewhere])));
        var hired = Piece("extras", five, new Owner(OwnerKind.Hire, "Vale"));
        Assert.Equal(["SB1-1: mic-5", "SB1-2: mic-5", "SB1-3: mic-10"], CableGigs.Made(CableGigs.Plan(CableGigs.OnDeck(), links, [five, ten], pieces: [elsewhere, hired])));
    }

    [Fact]
    public void A_unit_that_brings_its_own_lead_uses_it_and_gets_no_second_one()
    {
        Kind own = CableGigs.Lead("iec-2", "mains", "16 A blue male", "iec 10 A female", 2, owned: 1), ten = CableGigs.Mains(10);
        var unit = Piece("sound", Gigs.Kind("receiver", 1), null) with { Name = "unit 1" };
        var lead = Piece("sound", own, null) with { Why = new Need.GoesWith(unit.Address, Gigs.Here) };
        var plan = CableGigs.Plan(CableGigs.OnDeck(), [CableGigs.Circuit(1, 3.6, 4.7, "iec 10 A")], [own, ten], pieces: [unit, lead]);
        Assert.Equal(["PD1-1: iec-2"], CableGigs.Made(plan));
        Assert.Empty(plan.Pieces);
        var further = CableGigs.Plan(CableGigs.OnDeck(), [CableGigs.Circuit(1, -3, 4.7, "iec 10 A")], [own, ten], pieces: [unit, lead]);
        Assert.Equal(["PD1-1: mains-10 + iec-2"], CableGigs.Made(further));
        Assert.Equal("mains-10", Assert.Single(further.Pieces).Item);
    }

    [Fact]
    public void Why_there_is_no_lead_is_told_apart()
    {
        RunGap Gap(Link link, params Kind[] kinds) => CableGigs.Only(CableGigs.OnDeck(), link, kinds).Gap;
        var link = CableGigs.Mic(1, 3, 3);
        Assert.Equal(RunGap.None, Gap(link, CableGigs.Mic(20)));
        Assert.Equal(RunGap.NothingMates, Gap(link, CableGigs.Mains(20)));
        Assert.Equal(RunGap.NoneLongEnough, Gap(link, CableGigs.Mic(2)));
        Assert.Equal(RunGap.AllTaken, Gap(link, CableGigs.Mic(20, owned: 0)));
        Assert.Equal(RunGap.NotKnown, Gap(link with { To = link.To with { Connector = "" } }, CableGigs.Mic(20)));
    }

    [Fact]
    public void Runs_that_share_their_way_are_a_loom_and_mains_lies_apart()
    {
        IReadOnlyList<Link> links = [CableGigs.Mic(1, 0, 4), CableGigs.Mic(2, 0.1, 4), CableGigs.Mic(3, 0, 4.1), CableGigs.Mic(4, 0, 4), CableGigs.Mic(5, 0, 0.5), .. Enumerable.Range(1, 3).Select(number => CableGigs.Circuit(number, -4.5, -1))];
        var looms = CableGigs.Plan(CableGigs.OnDeck(), links, []).Runs.ToDictionary(run => run.Label, run => run.Loom, StringComparer.Ordinal);
        Assert.All(["SB1-1", "SB1-2", "SB1-3", "SB1-4"], label => Assert.Equal("loom SB1-1", looms[label]));
        Assert.All(["SB1-5", "PD1-1", "PD1-2", "PD1-3"], label => Assert.Null(looms[label]));
        var one = CableGigs.Plan(CableGigs.OnDeck(), [.. links, CableGigs.Circuit(4, -4.5, -1)], []);
        Assert.Equal("loom PD1-1", one.Runs.Single(run => run.Label == "PD1-4").Loom);
    }

    [Fact]
    public void What_is_left_over_is_coiled_at_the_microphone_and_on_the_stage()
    {
        Assert.Equal("source 1", CableGigs.Only(CableGigs.OnDeck(), CableGigs.Mic(1, 0, 4)).LeftOverAt.Port.Device);
        Assert.Equal("unit 1", CableGigs.Only(CableGigs.OnDeck(), CableGigs.Circuit(1, 0, 4)).LeftOverAt.Port.Device);
        LinkEnd box = CableGigs.End("SB1", PortKind.Link, null, "rj45", -3.5, 4.5), desk = CableGigs.End("FOH", PortKind.Link, null, "rj45", 0, -16);
        Assert.Equal("SB1", CableGigs.Only(CableGigs.OnDeck(), CableGigs.Link("net", box, desk, "network")).LeftOverAt.Port.Device);
        Assert.Equal("SB1", CableGigs.Only(CableGigs.OnDeck(), CableGigs.Link("net", desk, box, "network")).LeftOverAt.Port.Device);
    }

    private static Piece Piece(string department, Kind kind, Owner? from) => new(
        Address.Of(department) / kind.Id, kind.Id, kind.Id, kind, department, Given.Of(from ?? new Owner(OwnerKind.Shop), Gigs.Here), null, new Need.AskedFor(Gigs.Here));
}
