using System.Diagnostics;
using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning.Power;

/// <summary>What nobody would build, and somebody will write: a finding or a question, no crash, no number that is none.</summary>
public sealed class HostilePowerTests
{
    [Fact]
    public void Distributions_in_a_ring_are_told()
    {
        var plan = Plan(PowerGigs.Brief([PowerGigs.Thing("Lamp", 0)], [PowerGigs.Load("Lamp", 2, 0), .. Shop], [PowerGigs.Distribution("PD1", "box", "PD2", 0), PowerGigs.Distribution("PD2", "box", "PD1", 1)], [PowerGigs.Service("0", 0)]));
        Assert.Contains(plan.Findings, finding => finding.Rule == "power/fed-wrongly");
    }

    [Fact]
    public void Two_feeds_to_one_inlet_are_told()
    {
        var brief = PowerGigs.Brief([PowerGigs.Thing("Lamp", 0)], [PowerGigs.Load("Lamp", 2, 0), .. Shop], [PowerGigs.Distribution("PD1", "box", "service 0", 0), PowerGigs.Distribution("PD2", "box", "service 0", 1)], [PowerGigs.Service("0", 0)]);
        var twice = brief with { Gig = brief.Gig with { Power = brief.Gig.Power with { Circuits = [new CircuitRow("PD1", Given.Of(1, Gigs.Here), "PD2", "", Gigs.Here)] } } };
        Assert.Contains(Plan(twice).Findings, finding => finding.Rule == "power/fed-wrongly");
    }

    [Theory]
    [InlineData("400 V three-phase 50 Hz", "power/wrong-voltage")]
    [InlineData("400 V 50 Hz", "power/wrong-voltage")]
    [InlineData("220-240 V 60 Hz", "power/wrong-frequency")]
    public void What_takes_another_supply_is_told_and_gets_no_outlet(string takes, string rule)
    {
        var kind = PowerGigs.Load("Organ", 4, 0);
        var plan = Plan(PowerGigs.Brief([PowerGigs.Thing("Organ", 0)], [kind with { Mains = kind.Mains! with { Supply = Given.Of(LegGigs.Supply(takes), Gigs.Here) } }, .. Shop], [PowerGigs.Distribution("PD1", "box", "service 0", 0)], [PowerGigs.Service("0", 0)]));
        Assert.Contains(plan.Findings, finding => finding.Rule == rule);
    }

    [Fact]
    public void A_chain_longer_than_any_circuit_is_cut_and_what_is_left_over_is_told()
    {
        var plan = Plan(Stacks(1, 40, 3));
        Assert.Equal(5, Assert.Single(plan.Power.Circuits).Chain.Loads.Count);
        Assert.Equal(7, plan.Findings.Count(finding => finding.Rule == "power/unfed-load"));
    }

    [Fact]
    public void A_service_of_which_nothing_is_known_is_planned_on_and_asked_for()
    {
        var doubt = new Doubt("service 0", Gigs.Here);
        var service = PowerGigs.Service("0", 0) with { Supply = Given.Unknown<Supply>(Gigs.Here, doubt), Rating = Given.Unknown<ElectricCurrent>(Gigs.Here, doubt), Connector = Given.Unknown<string>(Gigs.Here, doubt), ResidualProtection = Given.Unknown<ElectricCurrent>(Gigs.Here, doubt) };
        var plan = Plan(PowerGigs.Brief([PowerGigs.Thing("Lamp", 0)], [PowerGigs.Load("Lamp", 2, 0), .. Shop], [PowerGigs.Distribution("PD1", "box", "service 0", 0)], [service]));
        Assert.Empty(plan.Power.Unfed);
        Assert.Equal(2, plan.Power.Services[0].Legs[0].InUse.Value!.Value.Amperes, 1e-9);
        Assert.Null(plan.Voltage.Circuits[0].Drop.Value);
        Assert.Contains(plan.Findings, finding => finding.Rule == "power/wrong-voltage" && finding.CannotBeJudged);
    }

    [Fact]
    public void What_draws_nothing_in_use_leaves_no_number_that_is_none()
    {
        var brief = LegGigs.Of([new("L1", 1, 0), new("L2", 1, null), new("L3", 1, 0)]);
        var stock = brief.Stock.Kinds.ToDictionary(one => one.Key, one => one.Value.Cable is null && one.Key != "box" ? one.Value with { Mains = one.Value.Mains! with { InUse = PowerGigs.Amperes(0) } } : one.Value, StringComparer.Ordinal);
        var plan = Plan(brief with { Stock = new(stock) });
        Assert.Equal(0, plan.Power.Services[0].Neutral!.InUse.Current.Value!.Value.Amperes);
    }

    [Fact]
    public void A_draw_that_nobody_knows_leaves_neutral_and_drop_unknown()
    {
        var brief = LegGigs.Of([new("L1", 1, 0), new("L2", 1, null)]);
        var stock = brief.Stock.Kinds.ToDictionary(StringComparer.Ordinal);
        stock["Thing 2"] = stock["Thing 2"] with { Mains = stock["Thing 2"].Mains! with { InUse = null } };
        var plan = Plan(brief with { Stock = new(stock) });
        Assert.Null(plan.Power.Services[0].Neutral!.InUse.Current.Value);
        Assert.Null(plan.Voltage.Points[0].Legs[0].Drop.Value);
    }

    [Theory]
    [InlineData("L9")]
    [InlineData("L1-L1")]
    [InlineData("phase one")]
    [InlineData("L3-L2-L1-N")]
    [InlineData("N")]
    public void A_phase_that_is_odd_is_never_counted_on_no_leg(string phase)
    {
        var brief = LegGigs.Of([new("L1", 5, 0)]);
        var box = brief.Stock.Kinds["box"];
        var kinds = new Dictionary<string, Kind>(brief.Stock.Kinds, StringComparer.Ordinal) { ["box"] = box with { Outlets = [box.Outlets[0] with { Phase = phase }] } };
        var service = Plan(brief with { Stock = new(kinds) }).Power.Services[0];
        Assert.True(service.Legs[0].InUse.Value!.Value.Amperes >= 5 - 1e-9);
    }

    // Two thousand boxes in forty rows: every sum at every place, in every state and set of legs.
    [Fact]
    public void Two_thousand_loads_are_added_in_seconds()
    {
        var clock = Stopwatch.StartNew();
        var plan = Plan(Stacks(40, 50, 0.2));
        Assert.Equal(2000, plan.Power.Services[0].Loads.Count);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(60), $"{clock.Elapsed}");
    }

    private static Kind[] Shop => [PowerGigs.Box("32 A blue"), PowerGigs.Lead("16 A blue"), PowerGigs.Lead("32 A blue")];

    private static Plan Plan(Brief brief)
    {
        var plan = Planner.Plan(brief);
        Assert.All(plan.Figures, stated => Assert.False(stated.Value is IQuantity quantity && !double.IsFinite((double)quantity.Value), stated.Address.Text));
        return plan;
    }

    // Rows of linked boxes on a box of circuits on three legs.
    private static Brief Stacks(int rows, int boxes, double draw)
    {
        const string Red = "63 A red";
        var outlets = Enumerable.Range(1, rows).Select(number => new OutletRow(new NumberRange(number, number), "16 A blue", $"L{((number - 1) % 3) + 1}", "C16", PowerGigs.Amperes(16), PowerGigs.Amperes(0.03), Gigs.Here));
        var box = PowerGigs.Box(Red) with { Outlets = [.. outlets] };
        var speaker = PowerGigs.Load("speaker", draw, 0, isPhasor: false) with { Role = Role.Loudspeaker };
        var service = PowerGigs.Service("0", 0, Given.Of(LegGigs.Supply("230/400 V three-phase 50 Hz"), Gigs.Here)) with { Connector = Given.Of(Red, Gigs.Here) };
        var brief = PowerGigs.Brief([], [box, speaker, PowerGigs.Lead("16 A blue"), PowerGigs.Lead(Red)], [PowerGigs.Distribution("PD1", "box", "service 0", 0)], [service]);
        var stacks = Enumerable.Range(1, rows).Select(row => new Stack($"Row {row}", null, Given.Of<Place>(Place.Centre.It, Gigs.Here), null, [new CountedItem(boxes, "speaker")], null, null, Gigs.Here));
        return brief with { Gig = brief.Gig with { Sound = brief.Gig.Sound with { Stacks = [.. stacks] } } };
    }
}
