using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning.Power;

/// <summary>What stands for kit that is not chosen yet is counted, and is eaten up as the real things appear.</summary>
public sealed class AllowanceTests
{
    // 2.3 kW at 230 V are 10 A, in whatever state the show is.
    [Fact]
    public void Power_that_is_allowed_for_flows_on_the_only_service()
    {
        var power = Planner.Plan(With(Two(), Draws("backline", 2300))).Power;
        var use = Assert.Single(power.Services[0].Legs);
        Assert.Equal(2 + 10, use.InUse.Value!.Value.Amperes, 6);
        Assert.All(use.InStates, figure => Assert.True(figure.Value!.Value.Amperes >= 10));
        Assert.Equal(4 + 10, use.AtMost.Value!.Value.Amperes, 6);
        Assert.Equal("backline", Assert.Single(power.Services[0].Allowances).Row.What);
        Assert.Contains(power.Figures, stated => stated.Address.Text == "power/allowance/backline/service 0/in-use");
    }

    [Fact]
    public void It_hangs_where_it_says_and_on_what_feeds_that()
    {
        var power = Planner.Plan(With(PowerGigs.Of([(1, 0, 0), (1, 0, 1)], [0, 1], services: 2, strangers: 0), Draws("backline", 2300) with { FedBy = "PD2" })).Power;
        Assert.Equal([0, 1], power.Services.Select(point => point.Allowances.Count));
        Assert.Equal([0, 1], power.Distributions.Select(point => point.Allowances.Count));
        Assert.True(power.Services[1].Legs[0].InUse.Value!.Value.Amperes >= 10);
        Assert.True(power.Services[0].Legs[0].InUse.Value!.Value.Amperes <= 2);
    }

    // A third of 6.9 kW on each of three legs of 230 V is 10 A.
    [Fact]
    public void On_three_phases_it_is_spread_over_the_legs()
    {
        var service = PowerGigs.Service("0", 0, PowerGigs.Voltage("230", Phases.Three));
        var power = Planner.Plan(With(PowerGigs.Brief([], [], [], [service]), Draws("lighting", 6900))).Power;
        Assert.Equal(3, power.Services[0].Legs.Count);
        Assert.All(power.Services[0].Legs, use => Assert.Equal(10, use.InUse.Value!.Value.Amperes, 6));
    }

    // The things are the act's: 2 A of 10 A are there already, 4 A at most, and 15 A are more than was allowed for.
    [Theory]
    [InlineData(2, 8, 6)]
    [InlineData(15, 0, 0)]
    public void What_is_there_already_is_taken_off_it(double draw, double left, double leftAtMost)
    {
        var thing = PowerGigs.Thing("Amp", 0);
        var brief = PowerGigs.Brief([], [PowerGigs.Load("Amp", draw, 0, isPhasor: false), PowerGigs.Box("32 A blue"), PowerGigs.Lead("16 A blue")], [PowerGigs.Distribution("PD1", "box", "service 0", 0)], [PowerGigs.Service("0", 0)]);
        brief = brief with { Gig = brief.Gig with { Acts = [Gigs.Act("Band") with { Backline = [thing] }] } };
        var power = Planner.Plan(With(brief, Draws("backline", 2300))).Power;
        var allowance = Assert.Single(power.Allowances);
        Assert.Equal(left, allowance.InUse.Value!.Value.Amperes, 6);
        Assert.Equal(leftAtMost, allowance.AtMost.Value!.Value.Amperes, 6);
        Assert.Equal(Math.Max(10, draw), power.Services[0].Legs[0].InUse.Value!.Value.Amperes, 6);
    }

    [Fact]
    public void How_much_nobody_knows_is_not_nothing()
    {
        var open = new Allowance("video", null, null, Gigs.Here) { Doubt = new Doubt("allow / video", Gigs.Here) };
        var plan = Planner.Plan(With(Two(), open));
        Assert.Null(plan.Power.Services[0].Legs[0].InUse.Value);
        Assert.Contains(plan.Power.Services[0].Legs[0].InUse.RestsOn, doubt => doubt.Subject == "allow / video");
        Assert.Null(plan.Load.Gross.Value);
        Assert.Contains(plan.Load.Gross.RestsOn, doubt => doubt.Subject == "allow / video");
    }

    // 4 boxes of 10 kg are pulled of the 90 kg that sound was given; nothing is pulled for video.
    [Fact]
    public void Weight_that_is_allowed_for_is_in_the_load_and_not_on_the_pull_list()
    {
        var box = Gigs.Kind("box", 9) with { Weight = Given.Of(Mass.FromKilograms(10), Gigs.Here, how: Known.Weighed) };
        var gig = Gigs.Gig() with { Extras = [new Extra("box", Given.Of(4, Gigs.Here), null, "", Gigs.Here)] };
        var plan = Planner.Plan(With(Gigs.Brief(gig, box), Weighs("sound", 90), Weighs("video", 60)));
        var pulled = plan.Stock.Lines.Sum(line => line.Total.Value!.Value) * 10;
        Assert.Equal(pulled, plan.Load.Weight.Value!.Value.Kilograms, 6);
        Assert.Equal([90 - pulled, 60], plan.Load.Allowances.Select(allowance => allowance.Left.Value!.Value.Kilograms));
        Assert.Equal(150, plan.Load.Gross.Value!.Value.Kilograms, 6);
    }

    [Fact]
    public void A_weight_draws_nothing_and_power_weighs_nothing()
    {
        var plan = Planner.Plan(With(Two(), Weighs("video", 60), Draws("lighting", 2300)));
        Assert.Equal("lighting", Assert.Single(plan.Power.Allowances).Row.What);
        Assert.Equal("video", Assert.Single(plan.Load.Allowances).Row.What);
    }

    private static Brief Two() => PowerGigs.Of([(1, 0, 0), (1, 0, 1)], [0], services: 1, strangers: 0);

    private static Brief With(Brief brief, params Allowance[] allowances) => brief with { Gig = brief.Gig with { Allowances = allowances } };

    private static Allowance Draws(string what, double watts) => new(what, Given.Of(UnitsNet.Power.FromWatts(watts), Gigs.Here), null, Gigs.Here);

    private static Allowance Weighs(string what, double kilograms) => new(what, null, Given.Of(Mass.FromKilograms(kilograms), Gigs.Here), Gigs.Here);
}
