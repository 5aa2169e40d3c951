namespace Advance.Tests.Planning.Rigging;

/// <summary>What legs are made of, and what follows from the lengths as made.</summary>
public sealed class BridleChoiceTests
{
    [Theory]
    [InlineData("drop: 1.2 m", 6.8)]
    [InlineData("drop: 1.75 m", 6.25)]
    [InlineData("legs: [2 m, 2 m]", 6.677)]
    public void The_hook_hangs_where_it_is_wanted_as_near_as_links_go(string bridle, double height)
    {
        var placed = BridleShow.Of(bridle).Rigging.Bridles.Single().Placed;
        var apex = placed.Apex!.Value;
        Assert.InRange(Math.Sqrt(Math.Pow(apex.X - 3, 2) + Math.Pow(apex.Y - 2, 2) + Math.Pow(apex.Z - height, 2)), 0, 0.05);

        // The law of cosines, not the solver: a leg is as long as it is from its point to the hook.
        Assert.All(placed.Legs.Zip([1.5, 4.5]), leg => Assert.Equal(leg.First.Made!.Length, Math.Sqrt(Math.Pow(leg.Second - apex.X, 2) + Math.Pow(8 - apex.Z, 2)), 1e-9));
    }

    [Fact]
    public void A_leg_is_as_long_as_its_parts_and_all_of_them_are_pulled()
    {
        var plan = BridleShow.Of("drop: 1.2 m");
        foreach (var leg in plan.Rigging.Bridles.Single().Placed.Legs)
        {
            var made = leg.Made!;
            var steels = made.Parts.Where(part => part.Id != "chain").Sum(part => part.Lifting!.Length!.Value.Value.Meters);
            Assert.Equal(steels + (made.Links ?? 0) * 0.045 + (made.Parts.Count + 1) * 0.06, made.Length, 1e-9);
            Assert.Equal(made.Parts.Count + 1, leg.Gear.Count(piece => piece.Item == "shackle"));
            Assert.DoesNotContain(leg.Gear, piece => piece.Item == "steel-weak");
            Assert.All(leg.Gear, piece => Assert.Contains(piece, plan.Pieces));
        }
    }

    [Fact]
    public void Forces_are_those_of_the_legs_as_made()
    {
        // T₁ = W L₁ H₂ / (V₁ H₂ + V₂ H₁), the trade's formula of two legs, with V the drop and H how far the hook is from each point.
        var bridle = BridleShow.Of("drop: 1.2 m").Rigging.Bridles.Single();
        var (apex, moving) = (bridle.Placed.Apex!.Value, bridle.Moving.Value!.Value.Kilograms);
        var (drop, first, second) = (8 - apex.Z, apex.X - 1.5, 4.5 - apex.X);
        Assert.Equal(moving * bridle.Legs[0].Placed.Made!.Length * second / (drop * (first + second)), bridle.Legs[0].Pull.Value!.Value.Kilograms, 1e-6 * moving);
        Assert.Equal(moving * bridle.Legs[1].Placed.Made!.Length * first / (drop * (first + second)), bridle.Legs[1].Pull.Value!.Value.Kilograms, 1e-6 * moving);
    }

    [Fact]
    public void What_a_leg_weighs_hangs_on_its_point()
    {
        var plan = BridleShow.Of("drop: 1.2 m");
        var leg = plan.Rigging.Bridles.Single().Legs[0];
        var point = plan.Rigging.Points.Single(point => point.Point.Name == "P2");
        Assert.Equal(leg.Placed.Gear.Sum(piece => piece.Kind!.Weight!.Value.Value.Kilograms), leg.Own.Value!.Value.Kilograms, 1e-9);
        Assert.Equal((leg.Down.Value!.Value + leg.Own.Value!.Value).Kilograms, point.AtRest.Value!.Value.Kilograms, 1e-9);
    }

    [Fact]
    public void What_the_shop_has_too_few_of_is_not_chosen()
    {
        var plan = BridleShow.Of("drop: 1.2 m", steels: 0);
        Assert.True(plan.Rigging.Bridles.Single().Placed.IsOff);
        Assert.Contains(plan.Findings, finding => finding.Rule == "rigging/bridle-off");
        Assert.Equal(6.8, plan.Rigging.Bridles.Single().Placed.Apex!.Value.Z, 1e-9);
    }

    [Fact]
    public void Written_gear_is_used_as_written()
    {
        var placed = BridleShow.Of("legs: [2 m, 2 m], gear: [2 x steel-1, shackle]").Rigging.Bridles.Single().Placed;
        Assert.All(placed.Legs, leg => Assert.Equal(["steel-1", "steel-1", "shackle"], leg.Gear.Select(piece => piece.Item)));
        Assert.Equal(8 - Math.Sqrt(4 - 2.25), placed.Apex!.Value.Z, 1e-9);
    }
}
