using Advance.Domain.Facts;
using Advance.Domain.Places;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning;

/// <summary>Directions are the performer's: stage left is to the left of somebody who faces the audience (reference I1).</summary>
public sealed class GroundTests
{
    private static readonly Ground Stage = new(Given.Of(new Size(Length.FromMeters(9), Length.FromMeters(6)), Gigs.Here));

    [Theory]
    [InlineData(StageArea.DownstageRight, -3, 1)]
    [InlineData(StageArea.Centre, 0, 3)]
    [InlineData(StageArea.UpstageLeft, 3, 5)]
    public void An_area_is_the_middle_of_its_ninth(StageArea area, double x, double y) =>
        Assert.Equal(new Spot(x, y), Stage.Find(At(new Place.AtArea(area))));

    [Fact]
    public void Off_centre_is_mirrored_by_the_side()
    {
        var place = At(new Place.Measured(Length.FromMeters(4.6), null, Length.FromMeters(-0.4), null));
        Assert.Equal(new Spot(-4.6, -0.4), Stage.Find(place, Side.StageRight));
        Assert.Equal(new Spot(4.6, -0.4), Stage.Find(place, Side.StageLeft));
    }

    [Fact]
    public void A_thing_may_stand_at_a_thing_and_a_circle_of_them_is_nowhere()
    {
        var ground = new Ground(default);
        ground.Name("Drums", At(new Place.Measured(Length.Zero, null, Length.FromMeters(4), null)));
        ground.Name("vocal", At(new Place.AtThing("drums")));
        ground.Name("hen", At(new Place.AtThing("egg")));
        ground.Name("egg", At(new Place.AtThing("hen")));

        Assert.Equal(new Spot(0, 4), ground.Find(At(new Place.AtThing("vocal"))));
        Assert.Null(ground.Find(At(new Place.AtThing("hen"))));
        Assert.Null(ground.Find(At(new Place.AtThing("nobody"))));
    }

    [Fact]
    public void An_unknown_place_is_nowhere_and_not_the_centre()
    {
        Assert.Null(Stage.Find(null));
        Assert.Null(Stage.Find(Given.Unknown<Place>(Gigs.Here, new Doubt("place", Gigs.Here))));
        Assert.Null(new Ground(default).Find(At(new Place.AtArea(StageArea.Centre))));
    }

    private static Given<Place> At(Place place) => Given.Of(place, Gigs.Here);
}
