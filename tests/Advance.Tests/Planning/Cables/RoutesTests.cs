using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>Sums by hand on a deck of 8 x 5 m: x from -4 to 4, y from 0 to 5. Which way a stagehand takes is common practice, no source.</summary>
public sealed class RoutesTests
{
    private static readonly CableWay Out = CableGigs.Way("FOH way", "along the wall, ramp at the door", (-3.5, 4.5), (-4.6, 4.5), (-6, -16), (0, -16));

    [Fact]
    public void On_the_deck_a_lead_goes_to_the_edge_and_along_it()
    {
        var route = CableGigs.Routes(CableGigs.OnDeck()).Find(new(0, 3.9), new(-3.5, 4.5));
        Assert.Equal(1.1 + 3.5 + 0.5, route.Path.Meters, 9);
        Assert.Equal(["upstage edge"], route.Via);
        Assert.Equal((0, false, false), (route.Climbs, route.IsEstimated, route.IsInHall));
    }

    [Fact]
    public void From_the_lip_of_the_stage_it_goes_round_and_not_past_the_drums()
    {
        var route = CableGigs.Routes(CableGigs.OnDeck()).Find(new(0, 1.3), new(-3.5, 4.5));
        Assert.Equal(1.3 + 4 + 4.5 + 0.5, route.Path.Meters, 9);
        Assert.Equal(["downstage edge", "SR edge"], route.Via);
    }

    [Fact]
    public void What_is_near_is_joined_straight()
    {
        var route = CableGigs.Routes(CableGigs.OnDeck()).Find(new(0, 2), new(1.8, 4.4));
        Assert.Equal(3, route.Path.Meters, 9);
        Assert.Equal(["straight"], route.Via);
        Assert.Empty(CableGigs.Routes(CableGigs.OnDeck()).Find(new(1, 1), new(1, 1)).Legs);
    }

    [Fact]
    public void Out_into_the_hall_it_takes_the_named_way()
    {
        var route = CableGigs.Routes(CableGigs.OnDeck(Out)).Find(new(-3.5, 4.5), new(0, -16));
        Assert.Equal(1.1 + Math.Sqrt((1.4 * 1.4) + (20.5 * 20.5)) + 6, route.Path.Meters, 0.02);
        Assert.Equal(["FOH way"], route.Via);
        Assert.Equal((1, false, true), (route.Climbs, route.IsEstimated, route.IsInHall));
        Assert.Equal([Out], route.Ways);
    }

    [Fact]
    public void Beside_the_stage_it_joins_a_way_in_the_middle_and_is_not_out_in_the_hall()
    {
        var route = CableGigs.Routes(CableGigs.OnDeck(Out)).Find(new(-3.5, 4.5), new(-4.6, -0.4));
        Assert.Equal(["FOH way"], route.Via);
        Assert.InRange(route.Path.Meters, 6, 6.5);
        Assert.Empty(route.Ways);
        Assert.False(route.IsInHall);
    }

    [Fact]
    public void Where_nobody_named_a_way_it_goes_straight_to_the_deck_and_is_called_estimated()
    {
        var route = CableGigs.Routes(CableGigs.OnDeck()).Find(new(0, -16), new(-3.5, 4.5));
        Assert.Equal(16 + 4 + 4.5 + 0.5, route.Path.Meters, 9);
        Assert.Equal((1, true), (route.Climbs, route.IsEstimated));
    }

    [Fact]
    public void A_way_that_ends_far_from_the_deck_is_taken_all_the_same_and_the_rest_is_estimated()
    {
        var route = CableGigs.Routes(CableGigs.OnDeck(CableGigs.Way("aisle", "on the floor", (0, -16), (0, -6)))).Find(new(0, -16), new(0, 0.5));
        Assert.Equal(16.5, route.Path.Meters, 9);
        Assert.Equal((true, "aisle"), (route.IsEstimated, route.Via[0]));
    }

    [Fact]
    public void A_corner_of_a_way_that_is_nowhere_leaves_a_gap_there()
    {
        var way = Out with { By = [Out.By[0], Given.Unknown<Place>(Gigs.Here, new Doubt("corner", Gigs.Here))] };
        var route = CableGigs.Routes(CableGigs.OnDeck(way)).Find(new(-3.5, 4.5), new(0, -16));
        Assert.True(route.IsEstimated);
        Assert.DoesNotContain(route.Legs, leg => leg.Way is not null && leg.From.Y < 0);
    }

    [Fact]
    public void Round_the_back_is_better_than_past_the_audience()
    {
        var route = CableGigs.Routes(CableGigs.OnDeck()).Find(new(-3.5, 4.5), new(4.6, -0.4));
        Assert.Equal(["upstage edge", "SL edge"], route.Via);
        Assert.Equal(0.5 + 7.5 + 5 + Math.Sqrt(0.36 + 0.16), route.Path.Meters, 0.02);
        Assert.Equal(1, route.Climbs);
    }

    [Fact]
    public void A_lead_climbs_onto_the_deck_before_it_lies_across_an_exit()
    {
        var (from, to) = (new Spot(-5, 5.5), new Spot(5, 5.5));
        var free = CableGigs.Routes(CableGigs.OnDeck()).Find(from, to);
        Assert.Equal(0, free.Climbs);
        var route = CableGigs.Routes(CableGigs.OnDeck(), CableGigs.Keep("fire exit", 0, 5.5, 2)).Find(from, to);
        Assert.Equal(2, route.Climbs);
        Assert.Empty(route.Trespasses);
    }

    [Fact]
    public void What_stands_in_the_exit_has_a_lead_across_it_and_that_is_said()
    {
        var routes = CableGigs.Routes(CableGigs.OnDeck(), CableGigs.Keep("fire exit", 6, 2, 2));
        Assert.Equal(["fire exit"], routes.Find(new(6, 2), new(0, 4)).Trespasses);
        Assert.Empty(routes.Find(new(3, 2), new(0, 4)).Trespasses);
    }

    [Fact]
    public void Two_things_out_in_the_hall_are_joined_straight_when_they_are_closer_to_each_other_than_to_the_stage()
    {
        var route = CableGigs.Routes(CableGigs.OnDeck()).Find(new(0, -16), new(6, -16));
        Assert.Equal((6, true), (route.Path.Meters, route.IsEstimated));
    }

    [Fact]
    public void Without_a_stage_every_way_is_a_straight_line_and_nothing_climbs()
    {
        var route = CableGigs.Routes(Gigs.Gig()).Find(new(0, 0), new(3, 4));
        Assert.Equal((5, true, 0), (route.Path.Meters, route.IsEstimated, route.Climbs));
    }

    [Fact]
    public void The_path_counts_the_climb_by_the_height_of_the_deck_but_at_least_what_the_policy_says()
    {
        double Path(double height) => CableGigs.Routes(Gigs.Gig() with { Stages = [CableGigs.Stage(8, 5, height)] }).Path(new(3.5, 2), new(5, 2)).Meters;
        Assert.Equal([1.5, 2.5, 3.3], new[] { Path(0), Path(0.6), Path(1.8) }.Select(path => Math.Round(path, 6)));
    }
}
