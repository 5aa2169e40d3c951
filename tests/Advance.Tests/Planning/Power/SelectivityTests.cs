using Advance.Planning;
using Advance.Reading;
using Advance.Tests.Reading;

namespace Advance.Tests.Planning.Power;

/// <summary>Whether only the nearer of two devices opens. IEC 60269-2 (from memory): fuses gG at 1.6 : 1. BS 7671, 536.4.1.4 (from memory): delayed and three times.</summary>
public sealed class SelectivityTests
{
    [Theory]
    [InlineData("gG 32", "32 A", "gG 16", "16 A", Selective.Yes)]
    [InlineData("gG 40", "40 A", "gG 25", "25 A", Selective.Yes)]
    [InlineData("gG 20", "20 A", "gG 16", "16 A", Selective.No)]
    [InlineData("gG 63", "63 A", "C16", "16 A", Selective.NotShown)]
    [InlineData("C32", "32 A", "C16", "16 A", Selective.NotShown)]
    [InlineData("C16", "16 A", "C16", "16 A", Selective.No)]
    [InlineData("TBC", "63 A", "gG 16", "16 A", Selective.NotShown)]
    [InlineData("gG 32", "TBC", "gG 16", "16 A", Selective.NotShown)]
    public void Fuses_are_by_their_ratio_and_breakers_are_not_shown(string before, string rating, string own, string ownRating, Selective expected)
    {
        var plan = Plan($"device: {before}, rating: {rating}, residual-protection: 0 mA", $"{own} | {ownRating} | 0 mA");
        Assert.Equal(expected, plan.Protection.Selectivity.OvercurrentOf("PD1"));
        Assert.Null(plan.Protection.Selectivity.ResidualOf("PD1"));
    }

    [Theory]
    [InlineData("residual-protection: 300 mA, residual-delay: 0.1 s", Selective.Yes)]
    [InlineData("residual-protection: 90 mA, residual-delay: 0.1 s", Selective.Yes)]
    [InlineData("residual-protection: 80 mA, residual-delay: 0.1 s", Selective.No)]
    [InlineData("residual-protection: 300 mA, residual-delay: 0 s", Selective.No)]
    [InlineData("residual-protection: 300 mA", Selective.NotShown)]
    public void Residual_devices_are_by_ratio_and_delay(string before, Selective expected) =>
        Assert.Equal(expected, Plan($"device: C32, rating: 32 A, {before}", "C16 | 16 A | 30 mA").Protection.Selectivity.ResidualOf("PD1"));

    // Two lamps on one box: its devices are alike, and each is a place of its own.
    [Fact]
    public void Each_two_devices_in_a_row_are_told_once()
    {
        var pairs = Plan("device: C32, rating: 32 A, residual-protection: 300 mA", "C16 | 16 A | 30 mA").Protection.Selectivity.Overcurrent;
        Assert.Equal(["PD1 outlet 1", "PD1 outlet 2"], pairs.Select(pair => pair.Nearer.Name));
        Assert.All(pairs, pair => Assert.Equal(("PD1", "service A"), (pair.Box, pair.Farther.Name)));
    }

    [Fact]
    public void A_box_that_is_not_there_has_none() => Assert.Null(Plan("device: C32, rating: 32 A, residual-protection: 0 mA", "C16 | 16 A | 0 mA").Protection.Selectivity.OvercurrentOf("PD9"));

    private static Plan Plan(string service, string outlet)
    {
        var door = MemoryDoor.Of(
            ("gig.yaml", """
                gig: Devices
                day: Sat 12 Sep 2026
                stock: stock.yaml
                venue: venue.yaml
                stage: {size: 6 x 4 m, height: 0 m above floor}
                hall: {things: [{name: Lamp 1, item: lamp, place: SL}, {name: Lamp 2, item: lamp, place: SR}]}
                power: {services: {A: {place: US 1 m}}, distributions: {PD1: {item: box, place: USC, fed-by: service A}}}

                """),
            ("venue.yaml", $"venue: The Grange\nservices:\n  A: {{place: there, supply: 230 V single-phase 50 Hz, connector: 32 A blue, earthing: TN-S, {service}}}\n"),
            ("stock.yaml", $$"""
                department: power
                kinds:
                  box:
                    name: Box
                    role: distribution
                    owned: 1
                    mains: {supply: 230 V single-phase 50 Hz, in-use: 0 A, at-most: 0 A, inlet: 32 A blue}
                    outlets: |
                      outlet | connector | phase | device | rating | residual
                      1-4    | 16 A blue |       | {{outlet}}
                  lamp:
                    name: Lamp
                    owned: 2
                    mains: {supply: 220-240 V 50 Hz, in-use: 2 A, at-most: 2 A, inrush: 8 A, leakage: 0.5 mA, inlet: 16 A blue}

                """));
        var read = BriefReader.Read(door, "gig.yaml");
        Assert.True(read.Brief is not null, string.Join('\n', read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
        return Planner.Plan(read.Brief);
    }
}
