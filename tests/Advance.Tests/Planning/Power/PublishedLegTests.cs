using Advance.Domain.Facts;
using Advance.Planning;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Planning.Power;

/// <summary>Published examples of currents and drops, put through the planner and not through the handbook alone.</summary>
public sealed class PublishedLegTests
{
    // Circuit theory: a balanced wye whose third harmonic is 0.6 of the fundamental has 1.54 times the line current in its neutral.
    [Fact]
    public void Six_tenths_of_third_harmonic_put_1_54_times_the_line_on_the_neutral()
    {
        var service = Planner.Plan(LegGigs.Of([new("L1", 10, 0, 60), new("L2", 10, 0, 60), new("L3", 10, 0, 60)])).Power.Services[0];
        Assert.Equal(15.4, service.Neutral!.InUse.Current.Value!.Value.Amperes, 0.05);
        Assert.Equal(["L1", "L2", "L3"], service.Neutral.InUse.On);
    }

    // The same on a split phase: triplens cancel, and the worst is one half alone.
    [Fact]
    public void On_a_split_phase_the_same_load_leaves_the_neutral_no_more_than_one_half()
    {
        var service = Planner.Plan(LegGigs.Of([new("L1", 10, 0, 60), new("L2", 10, 0, 60)], "120/240 V split-phase 60 Hz")).Power.Services[0];
        Assert.Equal(10, service.Neutral!.InUse.Current.Value!.Value.Amperes, 1e-9);
        Assert.Single(service.Neutral.InUse.On);
    }

    // Two legs of a wye: sqrt(L1² + L2² - L1 · L2), 20 and 20 A give 20 A; one alone gives 20 A too.
    [Fact]
    public void Two_legs_of_a_wye_load_the_neutral_like_a_line()
    {
        var service = Planner.Plan(LegGigs.Of([new("L1", 20, 0), new("L2", 20, 0)], "120/208 V split-phase 60 Hz")).Power.Services[0];
        Assert.Equal(20, service.Neutral!.InUse.Current.Value!.Value.Amperes, 1e-9);
    }

    // Three-phase of 400 V, one line open: 10 A between two lines flow in both, at 30° to either side of their voltages.
    [Fact]
    public void A_load_between_lines_adds_to_one_to_neutral_at_thirty_degrees()
    {
        var service = Planner.Plan(LegGigs.Of([new("L1", 10, 0), new("L1-L2", 10, 0), new("L2", 10, 0)])).Power.Services[0];
        Assert.Equal(20 * Math.Cos(Math.PI / 12), service.Legs[0].InUse.Value!.Value.Amperes, 1e-9);
        Assert.Equal(20 * Math.Cos(Math.PI / 12), service.Legs[1].InUse.Value!.Value.Amperes, 1e-9);
    }

    // BS 7671, Table 4F1B, 16 mm²: 2.9 mV/A/m for two conductors, 2.5 for three phases; 63 A over 75 m. One leg alone 13.7 V, 6.0 %; balanced 11.8 V between lines, 3.0 %.
    [Fact]
    public void One_leg_alone_of_a_long_feeder_loses_twice_what_three_lose()
    {
        var brief = LegGigs.Of([new("L1", 63, 0), new("L2", 63, 0), new("L3", 63, 0)]);
        var kinds = brief.Stock.Kinds.ToDictionary(StringComparer.Ordinal);
        var feeder = kinds["lead 63 A red"];
        kinds["lead 63 A red"] = feeder with { Cable = feeder.Cable! with { Section = "16 mm2", Length = Given.Of(Length.FromMeters(75), Gigs.Here) } };
        var legs = Planner.Plan(brief with { Stock = new(kinds) }).Voltage.Points.Single().Legs;
        Assert.All(legs, leg => Assert.Equal(100 * 2.9e-3 * 63 * 75 / 230, leg.Alone.Value!.Value.Percent, 0.12));
        Assert.All(legs, leg => Assert.Equal(100 * 2.5e-3 * 63 * 75 / 400, leg.Drop.Value!.Value.Percent, 0.06));
    }

    // BS 7671, Table 4F3B: 16 A over 50 m of 2.5 mm² at 19 mV/A/m lose 15.2 V, 6.61 %. Here over feeder and lead of 25 m each.
    [Fact]
    public void Sixteen_amperes_over_fifty_metres()
    {
        var brief = LegGigs.Of([new("L1", 16, 0)], "230 V single-phase 50 Hz");
        var kinds = brief.Stock.Kinds.ToDictionary(one => one.Key, one => one.Value.Cable is { } cable ? one.Value with { Cable = cable with { Length = Given.Of(Length.FromMeters(25), Gigs.Here) } } : one.Value, StringComparer.Ordinal);
        Assert.Equal(6.61, Planner.Plan(brief with { Stock = new(kinds) }).Voltage.Circuits.Single().Drop.Value!.Value.Percent, 0.03);
    }

    [Fact]
    public void On_a_two_wire_chain_with_lagging_load_the_drop_never_falls_when_a_box_is_put_behind() => Gen.Select(Gen.Double[0.1, 2.6], Gen.Int[0, 60], Gen.Int[1, 4]).Sample(
        (draw, lag, boxes) => Assert.True(Drop(boxes + 1, draw, lag) >= Drop(boxes, draw, lag) - 1e-9),
        iter: 20);

    private static double Drop(int boxes, double draw, int lag)
    {
        var brief = PowerGigs.Of([], [0], services: 1, strangers: 0);
        var stack = new Advance.Domain.Gigs.Stack("Main", null, Given.Of<Advance.Domain.Places.Place>(Advance.Domain.Places.Place.Centre.It, Gigs.Here), null, [new CountedItem(boxes, "speaker")], null, null, Gigs.Here);
        var kind = PowerGigs.Load("speaker", draw, lag) with { Role = Advance.Domain.Stocks.Role.Loudspeaker };
        var whole = brief with { Gig = brief.Gig with { Sound = brief.Gig.Sound with { Stacks = [stack] } }, Stock = new(brief.Stock.Kinds.Append(new("speaker", kind)).ToDictionary(StringComparer.Ordinal)) };
        return Planner.Plan(whole).Voltage.Circuits.Single().Drop.Value!.Value.Percent;
    }
}
