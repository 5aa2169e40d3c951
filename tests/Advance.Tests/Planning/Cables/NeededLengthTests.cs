using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning;

/// <summary>Sums by hand. Slack, trims and climbs are common practice, no source.</summary>
public sealed class NeededLengthTests
{
    private static readonly CableWay Out = CableGigs.Way("FOH way", "along the wall, ramp at the door", (-3.5, 4.5), (-4.6, 4.5), (-4.6, -15.5), (0, -15.5));
    private static readonly LinkEnd Box = CableGigs.End("SB1", PortKind.Link, null, "rj45", -3.5, 4.5);

    [Fact]
    public void A_microphone_has_two_metres_at_its_stand_and_one_at_the_box() => Needs(CableGigs.Mic(1, 0, 3.9), (5.1 * 1.1) + 2 + 1);

    [Fact]
    public void A_lead_in_one_place_is_only_as_long_as_its_trims() =>
        Needs(CableGigs.Link("in", CableGigs.End("SB1", PortKind.Output, 15, "xlr-3", 1, 1), CableGigs.End("DRIVE", PortKind.Input, 1, "xlr-3", 1, 1), "mic-line"), 2);

    [Fact]
    public void A_return_and_a_circuit_have_one_metre_at_each_end_and_climb_off_the_deck()
    {
        Needs(CableGigs.Link("mix", CableGigs.End("SB1", PortKind.Output, 1, "xlr-3", -3.5, 4.5), CableGigs.End("Drums", PortKind.Input, null, "xlr-3", 0, 3.9), "mic-line"), (5.1 * 1.1) + 2);
        Needs(CableGigs.Circuit(1, 5, 4.7), (1.4 * 1.1) + 1 + 2);
    }

    [Fact]
    public void A_feeder_has_three_metres_at_its_source_and_two_at_the_box()
    {
        var gig = CableGigs.OnDeck() with { Power = new([new Device("PD1", Given.Of("distro", Gigs.Here), null, null, null, null, Gigs.Here)], [], []) };
        Needs(CableGigs.Link("feed", CableGigs.End("A", PortKind.Outlet, null, "32 A blue", 5, 4.7), CableGigs.End("PD1", PortKind.Input, null, "32 A blue", 3.6, 4.7), "mains"), (1.4 * 1.1) + 1 + 3 + 2, gig);
    }

    [Fact]
    public void Out_in_the_hall_a_network_lead_has_five_metres_at_each_end_and_one_more_for_the_ramp()
    {
        var toDesk = CableGigs.Link("FOH", Box, CableGigs.End("FOH", PortKind.Link, null, "rj45", 0, -15.5), "network");
        Needs(toDesk, ((1.1 + 20 + 4.6) * 1.1) + 1 + 1 + 5 + 5, CableGigs.OnDeck(Out));
        Needs(toDesk, ((1.1 + 20 + 4.6) * 1.1) + 1 + 3 + 5 + 5, CableGigs.OnDeck(Out with { Ramps = Given.Of(3, Gigs.Here) }));
        Needs(toDesk, ((1.1 + 20 + 4.6) * 1.1) + 1 + 0 + 5 + 5, CableGigs.OnDeck(Out with { Laid = "along the wall" }));
    }

    [Fact]
    public void On_the_stage_a_network_lead_has_one_metre_at_each_end() =>
        Needs(CableGigs.Link("switch", Box, CableGigs.End("SW1", PortKind.Link, null, "rj45", -3.5, 2.5), "network"), (2 * 1.1) + 2);

    [Fact]
    public void From_what_hangs_it_comes_down_and_has_three_metres_along_the_floor_and_one_at_the_truss() =>
        Needs(CableGigs.Link("fixture", CableGigs.End("desk", PortKind.Output, 1, "xlr-5", 0, 1), CableGigs.End("1", PortKind.Input, null, "xlr-5", 0, 3, height: 4), "lighting-control"), (2 * 1.1) + 4 + 3 + 1 + 1);

    [Fact]
    public void Side_by_side_on_a_truss_it_stays_up_there_and_in_a_stack_it_goes_from_height_to_height()
    {
        Needs(CableGigs.Link("truss", CableGigs.End("1", PortKind.Link, null, "xlr-5", 0, 1, 4), CableGigs.End("2", PortKind.Input, null, "xlr-5", 2, 1, 4.5), "lighting-control"), (2 * 1.1) + 0.5 + 2);
        Needs(CableGigs.Link("stack", CableGigs.End("1", PortKind.Link, null, "xlr-3", 5, -1, 0.3), CableGigs.End("2", PortKind.Input, null, "xlr-3", 5, -1, 1.5), "mic-line"), 1.2 + 2);
        Needs(CableGigs.Link("beside", CableGigs.End("1", PortKind.Link, null, "xlr-3", 5, -1, 1), CableGigs.End("2", PortKind.Input, null, "xlr-3", 6, -1, 1.5), "mic-line"), 1.1 + 1 + 1.5 + 2);
    }

    [Fact]
    public void A_high_deck_counts_with_its_height_and_one_on_the_floor_with_nothing()
    {
        double Off(double height) => Run(CableGigs.Circuit(1, 5, 4.7), Gigs.Gig() with { Stages = [CableGigs.Stage(8, 5, height)] }).Needed.Value!.Value.Meters;
        Assert.Equal(1.8, Off(1.8) - Off(0), 9);
        Assert.Equal(1, Off(0.6) - Off(0), 9);
    }

    [Fact]
    public void The_company_sets_slack_and_trims()
    {
        var policies = CablePolicies.Default with { Slack = 20, Trims = CableTrims.Default with { MicStand = Length.FromMeters(4) } };
        var brief = Gigs.Brief(CableGigs.OnDeck());
        brief = brief with { Company = brief.Company with { Policies = brief.Company.Policies with { Cables = policies } } };
        var run = CableDepartment.Choose(brief, [CableGigs.Mic(1, 0, 3.9)], [], CableGigs.Routes(brief.Gig), Choices.None).Runs[0];
        Assert.Equal((5.1 * 1.2) + 4 + 1, run.Needed.Value!.Value.Meters, 9);
    }

    [Fact]
    public void What_stands_nowhere_has_no_length_and_not_nought()
    {
        var link = CableGigs.Mic(1, 0, 0) with { From = CableGigs.Mic(1, 0, 0).From with { Spot = null } };
        var run = CableGigs.Only(CableGigs.OnDeck(), link, CableGigs.Mic(10));
        Assert.Equal((null, null, RunGap.NotKnown), (run.Needed.Value, run.MadeUp.Value, run.Gap));
        Assert.Empty(run.Leads);
    }

    [Fact]
    public void Open_questions_about_ends_stage_and_way_travel_to_every_figure_of_the_run()
    {
        Doubt end = new("end", Gigs.Here), size = new("size", Gigs.Here), height = new("height", Gigs.Here), corner = new("corner", Gigs.Here);
        var stage = CableGigs.Stage(
            Given.Of(new Size(Length.FromMeters(8), Length.FromMeters(5)), Gigs.Here, size),
            Given.Unknown<HeightFrom>(Gigs.Here, height));
        var way = Out with { To = Given.Of(Out.To.Value, Gigs.Here, corner) };
        var gig = Gigs.Gig() with { Stages = [stage], CableWays = [way] };
        var link = CableGigs.Link("FOH", Box, CableGigs.End("FOH", PortKind.Link, null, "rj45", 0, -15.5), "network", Doubts.Of(end));
        var run = CableGigs.Only(gig, link, CableGigs.Lead("net-50", "network", "rj45 male", "rj45 male", 50));
        Assert.All(new[] { run.Needed, run.MadeUp, run.Surplus }, figure => Assert.Equal(["corner", "end", "height", "size"], figure.RestsOn.Select(doubt => doubt.Subject)));
    }

    [Fact]
    public void The_printed_formula_with_its_printed_inputs_gives_the_printed_length()
    {
        var run = Run(CableGigs.Link("FOH", Box, CableGigs.End("FOH", PortKind.Link, null, "rj45", 0.3, -15.2), "network"), CableGigs.OnDeck(Out));
        var working = run.Needed.How!;
        Assert.Equal("L = p · (1 + s / 100) + r + t", working.Formula);
        var inputs = working.Inputs.ToDictionary(input => input.Symbol, input => input.Value is Length length ? Printed(length.Meters) : (double)input.Value!);
        Assert.Equal(Printed(run.Needed.Value!.Value.Meters), Printed((inputs["p"] * (1 + (inputs["s"] / 100))) + inputs["r"] + inputs["t"]));
        Assert.All(working.Inputs.Where(input => input.Symbol is "r" or "t"), input => Assert.Equal(((Length)input.Value!).Meters, input.How!.Inputs.Sum(part => ((Length)part.Value!).Meters), 9));
    }

    private static double Printed(double metres) => Math.Round(metres, 2, MidpointRounding.AwayFromZero);

    private static Run Run(Link link, Gig gig) => CableGigs.Only(gig, link);

    // To the centimetre for each leg: legs are rounded up to it.
    private static void Needs(Link link, double metres, Gig? gig = null) =>
        Assert.Equal(metres, Run(link, gig ?? CableGigs.OnDeck()).Needed.Value!.Value.Meters, 0.001);
}
