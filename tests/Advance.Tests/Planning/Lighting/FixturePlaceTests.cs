using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning;

public sealed class FixturePlaceTests
{
    [Fact]
    public void Fixtures_stand_side_by_side_around_the_middle_of_their_position() =>
        Assert.Equal([-0.45, -0.15, 0.15, 0.45], Xs(LightingGigs.Position("LX", 0, -1)));

    [Fact]
    public void They_are_spread_over_a_length_that_was_written() =>
        Assert.Equal([-3, -1, 1, 3], Xs(LightingGigs.Position("LX", 0, -1) with { Length = Given.Of(Length.FromMeters(8), Gigs.Here) }));

    [Fact]
    public void They_are_spread_over_the_bar_that_comes_with_the_stand()
    {
        var bar = Gigs.Kind("bar", 2) with { Size = Given.Of(new Size(Length.FromMeters(1.6), Length.FromMeters(0.06)), Gigs.Here) };
        var stand = Gigs.Kind("stand", 2) with { With = [new CountedItem(1, "bar")] };
        var position = LightingGigs.Position("LX", 0, -1) with { Item = Given.Of("stand", Gigs.Here) };
        Assert.Equal([-0.6, -0.2, 0.2, 0.6], Planner.Plan(LightingGigs.Brief(LightingGigs.Gig([position], LightingGigs.Row(1, 4, "LX")), stand, bar)).Lighting.Fixtures.Select(X));
    }

    [Fact]
    public void A_company_may_count_from_stage_left()
    {
        var gig = LightingGigs.Gig([LightingGigs.Position("LX", 0, -1)], LightingGigs.Row(1, 2, "LX"));
        var company = Company.Default with { Numbering = new Dictionary<string, string>(StringComparer.Ordinal) { ["fixtures"] = "from SL" } };
        var placed = LightingDepartment.Place(gig, LightingGigs.Brief(gig).Stock, new Ground(default), company);
        Assert.Equal([0.15, -0.15], placed.Fixtures.Select(X));
    }

    [Theory]
    [InlineData(0, 2, HeightFrom.Floor, 3.4, 4)]
    [InlineData(0, 2, HeightFrom.Deck, 4, 4.6)]
    [InlineData(6, -1, HeightFrom.Floor, 4, 4)]
    [InlineData(6, -1, HeightFrom.Deck, 4.6, 4.6)]
    public void A_trim_counts_from_floor_or_deck_and_hangs_above_what_is_below(double x, double y, string above, double height, double trim)
    {
        // The deck is 0.6 m high, and all trims are written as 4 m.
        var stage = new Stage(
            "stage",
            Given.Of(new Size(Length.FromMeters(8), Length.FromMeters(5)), Gigs.Here),
            Given.Of(new HeightFrom(Length.FromMeters(0.6), HeightFrom.Floor), Gigs.Here),
            null,
            null,
            null,
            null,
            [],
            Gigs.Here);
        var gig = LightingGigs.Gig([LightingGigs.Position("LX", x, y, new HeightFrom(Length.FromMeters(4), above))], LightingGigs.Row(1, 1, "LX")) with { Stages = [stage] };
        var plan = Planner.Plan(LightingGigs.Brief(gig));
        Assert.Equal(height, plan.Lighting.Fixtures[0].Height, 9);
        Assert.Equal(height, plan.Lighting.Links[0].To.Height, 9);
        Assert.Equal(trim, plan.Lighting.Positions[0].Trim.Value!.Value.Meters, 9);
    }

    [Fact]
    public void A_trim_that_nobody_wrote_is_a_question_behind_every_lead_up_there()
    {
        var gig = LightingGigs.Gig([LightingGigs.Position("LX", 0, -1) with { Trim = null }], LightingGigs.Row(1, 1, "LX"));
        var plan = Planner.Plan(LightingGigs.Brief(gig));
        Assert.Null(plan.Lighting.Positions[0].Height.Value);
        Assert.Contains(plan.Lighting.Links[0].RestsOn, doubt => doubt is { LeftOut: true, Subject: "lighting / positions / LX / trim" });
    }

    private static IEnumerable<double> Xs(Position position) =>
        Planner.Plan(LightingGigs.Brief(LightingGigs.Gig([position], LightingGigs.Row(1, 4, "LX")))).Lighting.Fixtures.Select(X);

    private static double X(FixturePlan fixture) => Math.Round(fixture.Spot!.Value.X, 6);
}
