using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>The venue's places are measured from its datum, and the stage is placed in it.</summary>
public sealed class VenueDatumTests
{
    [Fact]
    public void Points_stay_where_they_are_when_the_stage_moves()
    {
        var there = Of("6 m US of door line", upstage: 8);
        var moved = Of("SL 1 m US 4.5 m", upstage: 8);

        Assert.Equal(new Spot(-3, 2), there.Rigging.Points[0].Spot);
        Assert.Equal(new Spot(-4, 3.5), moved.Rigging.Points[0].Spot);
        Assert.Equal(new Spot(0, -6), there.Stage.Datum);
        Assert.Equal(new Spot(-1, -4.5), moved.Stage.Datum);
    }

    [Fact]
    public void It_is_the_same_as_points_written_from_the_stage()
    {
        var (from, own) = (Of("6 m US of door line", upstage: 8), Of(null, upstage: 2));

        Assert.Equal(own.Rigging.Figures.Select(stated => $"{stated.Address} {stated.Value}"), from.Rigging.Figures.Select(stated => $"{stated.Address} {stated.Value}"));
        Assert.Equal(own.Rigging.Picks.Select(pick => pick.Lean!.Off.Value!.Value.Meters), from.Rigging.Picks.Select(pick => pick.Lean!.Off.Value!.Value.Meters), (one, other) => Math.Abs(one - other) < 1e-9);
    }

    [Theory]
    [InlineData("TBC venue")]
    [InlineData("6 m US of wing line")]
    public void Where_nobody_knows_where_the_stage_stands_nobody_knows_where_its_points_are(string edge)
    {
        var plan = Of(edge, upstage: 8);

        Assert.All(plan.Rigging.Points, point => Assert.Null(point.Spot));
        Assert.Null(plan.Stage.Datum);
    }

    [Fact]
    public void What_is_doubted_of_the_stage_is_doubted_of_its_points()
    {
        var points = Of("6 m US of door line TBC venue", upstage: 8).Brief.Venue.RoofPoints.Value;

        Assert.All(points, point => Assert.Equal("stage / downstage-edge", point.Place.Doubt!.Subject));
    }

    private static Plan Of(string? edge, double upstage)
    {
        var gig = FormattableString.Invariant($$"""
            gig: In a hall
            day: Sat 12 Sep 2026
            stock: stock.yaml
            venue: venue.yaml
            stage: {size: 8 x 5 m, height: 0.6 m above floor{{(edge is null ? "" : $", downstage-edge: {edge}")}}}
            rigging:
              trusses:
                T1:
                  item: truss
                  length: 6 m
                  place: US 2 m
                  trim: 4 m above floor
                  picks: [{along: 0 m, hoist: hoist, point: P1}, {along: 6 m, hoist: hoist, point: P2}]
            """);
        const string Stock = """
            kinds:
              truss: {name: Truss, owned: 9, weight: 18 kg weighed, truss: {length: 3 m, moment: 18 kNm, shear: 11 kN}}
              hoist: {name: Hoist, owned: 9, weight: 45 kg weighed, hoist: {lifts: 500 kg, holds: 500 kg}}
            """;
        var venue = FormattableString.Invariant($$"""
            venue: A hall
            datum: centre of the door line, floor level
            lines: {door line: the doors, wing line: the wing}
            roof-points:
              P1: {place: SR 3 m US {{upstage}} m, height: 8 m, limit: 600 kg}
              P2: {place: SL 3 m US {{upstage}} m, height: 8 m, limit: 600 kg}
            """);
        return SmallShow.Of(gig, Stock, venue);
    }
}
