using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning;

/// <summary>The shop's spares: common practice, no source.</summary>
public sealed class SparePolicyTests
{
    [Theory]
    [InlineData(1, 2)]
    [InlineData(13, 2)]
    [InlineData(14, 3)]
    [InlineData(40, 6)]
    public void Mic_leads_15_per_cent_and_two_of_each_length(int need, int spare) => Assert.Equal(spare, SpareOf(Lead("mic-line", 10, cores: 2), need));

    [Theory]
    [InlineData(1, 2)]
    [InlineData(20, 2)]
    [InlineData(21, 3)]
    public void Mains_link_and_lighting_leads_10_per_cent_and_two(int need, int spare)
    {
        Assert.Equal(spare, SpareOf(Lead("mains", 10, cores: 3, amperes: 16), need));
        Assert.Equal(spare, SpareOf(Lead("lighting-control", 10, cores: 4), need));
    }

    [Fact]
    public void A_feeder_and_a_multi_have_none()
    {
        Assert.Equal(0, SpareOf(Lead("mains", 25, cores: 5, amperes: 63), 2));
        Assert.Equal(0, SpareOf(Lead("mic-line", 30, cores: 24), 2));
    }

    [Fact]
    public void One_more_of_each_adapter_and_one_more_terminator()
    {
        Assert.Equal(1, SpareOf(Lead("mains", 0.5, cores: 3, amperes: 16), 7));
        Assert.Equal(1, SpareOf(Gigs.Kind("end", 99) with { Role = Role.Terminator }, 3));
    }

    [Theory]
    [InlineData(3, 0)]
    [InlineData(4, 1)]
    [InlineData(8, 1)]
    [InlineData(9, 2)]
    public void One_self_powered_box_for_eight_begun_and_none_for_three(int need, int spare)
    {
        Assert.Equal(spare, SpareOf(Powered, need));
        Assert.Equal(0, SpareOf(Powered with { Mains = null }, need));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(6, 1)]
    [InlineData(7, 2)]
    public void One_radio_for_six_begun(int need, int spare) =>
        Assert.Equal(spare, SpareOf(Gigs.Kind("radio", 99) with { Role = Role.Microphone, IsRadio = true }, need));

    [Theory]
    [InlineData(10, 0)]
    [InlineData(11, 1)]
    [InlineData(21, 2)]
    public void Fixtures_5_per_cent_in_a_rig_of_more_than_ten(int need, int spare) =>
        Assert.Equal(spare, SpareOf(Gigs.Kind("wash", 99) with { Role = Role.Fixture }, need));

    [Fact]
    public void A_rig_is_counted_over_all_kinds()
    {
        var extras = new[] { Extra("wash", 8), Extra("spot", 3) };
        var kinds = new[] { "wash", "spot" }.Select(id => Gigs.Kind(id, 99) with { Role = Role.Fixture }).ToArray();
        var plan = Planner.Plan(Gigs.Brief(Gigs.Gig() with { Extras = extras }, kinds));
        Assert.All(plan.Stock.Lines, line => Assert.Equal(1, line.Spare.Value));
    }

    [Fact]
    public void The_company_sets_them()
    {
        var policies = Policies.Default with { SpareMicLeads = new Share(100, 0), SpareBoxes = new OnePer(2) };
        Assert.Equal(6, SpareOf(Lead("mic-line", 10, cores: 2), 6, policies));
        Assert.Equal(3, SpareOf(Powered, 6, policies));
    }

    private static Kind Powered => Gigs.Kind("box", 99) with
    {
        Role = Role.Loudspeaker,
        Mains = new Mains(null, null, null, null, null, null, "locking mains 20 A", "", null, null),
    };

    private static Kind Lead(string carries, double metres, int cores, double? amperes = null) => Gigs.Kind("lead", 99) with
    {
        Role = Role.Cable,
        Cable = new Cable(
            carries,
            "one end",
            "other end",
            Given.Of(Length.FromMeters(metres), Gigs.Here),
            "",
            cores,
            amperes is { } rating ? Given.Of(ElectricCurrent.FromAmperes(rating), Gigs.Here) : null),
    };

    private static int? SpareOf(Kind kind, int need, Policies? policies = null)
    {
        var brief = Gigs.Brief(Gigs.Gig() with { Extras = [Extra(kind.Id, need)] }, kind);
        var plan = Planner.Plan(brief with { Company = brief.Company with { Policies = policies ?? Policies.Default } });
        return plan.Stock.Lines.Single().Spare.Value;
    }

    private static Extra Extra(string item, int count) => new(item, Given.Of(count, Gigs.Here), null, "", Gigs.Here);
}
