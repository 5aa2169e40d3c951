using Advance.Planning;

namespace Advance.Tests.Planning;

/// <summary>What hangs on a stand, a pipe or a truss.</summary>
public sealed class CarriedWeightTests
{
    // Four fixtures of 2.9 kg, each with a clamp of 0.4 kg and a bond of 0.15 kg; all weighed, so without margin.
    [Fact]
    public void It_is_that_of_fixtures_clamps_and_bonds() => Assert.All(
        Planner.Plan(SoundGigs.Sample).Lighting.Positions, position => Assert.Equal(4 * (2.9 + 0.4 + 0.15), position.Carries.Value!.Value.Kilograms, 9));

    [Fact]
    public void It_is_unknown_where_a_fixture_was_never_weighed()
    {
        var gig = LightingGigs.Gig([LightingGigs.Position("LX", 0, 0)], LightingGigs.Row(1, 2, "LX"));
        var brief = LightingGigs.Brief(gig);
        Assert.Null(brief.Stock.Find("wash")!.Weight);
        Assert.Null(Planner.Plan(brief).Lighting.Positions.Single().Carries.Value);
    }
}
