using Advance.Handbook;

namespace Advance.Published;

/// <summary>
/// Bridles and slings: the lessons of a page on rigging mathematics, a sling catalogue (p. 99), pages on sling angles; where a source gives inputs only,
/// the answer is worked out from geometry, and said so.
/// </summary>
public sealed class BridleExamples
{
    [Fact]
    public void Lesson_3_lengths_and_the_angle_between_worked_out_here()
    {
        var bridle = TwoLegBridle.FromApex(1, 10, 4, 6, 3);
        Near.AsPrinted("10.77", bridle.First.Length);
        Near.AsPrinted("6.708", bridle.Second.Length);
        Near.AsPrinted("48.37", bridle.IncludedAngle);
    }

    [Fact]
    public void Anchors_of_unequal_height_worked_out_here()
    {
        var bridle = TwoLegBridle.FromApex(1000, 4, 3, 6, 2.5);
        Near.AsPrinted("5.0", bridle.First.Length);
        Near.AsPrinted("6.5", bridle.Second.Length);
        Near.AsPrinted("446.43", bridle.First.Tension);
        Near.AsPrinted("696.43", bridle.Second.Tension);
        Near.AsPrinted("267.86", bridle.HorizontalPull);
        Near.AsPrinted("267.86", bridle.First.Horizontal);
        Near.AsPrinted("357.14", bridle.First.Vertical);
        Near.AsPrinted("642.86", bridle.Second.Vertical);
        Near.AsPrinted("59.49", bridle.IncludedAngle);
    }

    [Fact]
    public void The_same_from_the_lengths_of_its_legs()
    {
        var bridle = TwoLegBridle.FromLengths(1000, 5.5, 2, 5, 6.5)!;
        Near.Within(4, bridle.Apex.Drop, 1e-9);
        Near.Within(3, bridle.Apex.Away, 1e-9);
        Near.AsPrinted("696.43", bridle.Second.Tension);
        Assert.True(bridle.IsTaut);
        Assert.Null(TwoLegBridle.FromLengths(1000, 5.5, 2, 2, 3));
    }

    [Fact]
    public void At_120_degrees_each_leg_carries_the_whole_load()
    {
        var bridle = TwoLegBridle.FromApex(1000, 1, Math.Sqrt(3), 1, Math.Sqrt(3));
        Near.Within(120, bridle.IncludedAngle, 1e-9);
        Near.Within(1000, bridle.First.Tension, 1e-9);
        Near.Within(1000, bridle.Second.Tension, 1e-9);
        Near.AsPrinted("0.866", bridle.HorizontalPull / 1000);
        Near.Within(30, bridle.First.FromHorizontal, 1e-9);
    }

    [Fact]
    public void Apex_outside_its_anchors_leaves_a_leg_slack()
    {
        var bridle = TwoLegBridle.FromApex(1000, 4, -0.5, 4, 3);
        Assert.False(bridle.IsTaut);
        Assert.True(bridle.Second.IsSlack);
        Assert.True(bridle.HorizontalPull < 0);
    }

    [Theory]
    [InlineData(90, 5000)]
    [InlineData(60, 5775)]
    [InlineData(45, 7070)]
    [InlineData(30, 10000)]
    public void Catalogue_two_equal_legs_under_10000_lb(double fromHorizontal, double pounds) =>
        Near.Within(pounds, SlingAngles.EqualLegs(10000, 2, fromHorizontal), 5);

    [Theory]
    [InlineData(1000, 60, "577")]
    [InlineData(1000, 45, "707")]
    public void Two_legs_under_1000_lb(double pounds, double fromHorizontal, string printed) =>
        Near.AsPrinted(printed, SlingAngles.EqualLegs(pounds, 2, fromHorizontal));

    [Fact]
    public void Two_thousand_pounds_on_two_legs_at_60_degrees() => Near.Within(1154, SlingAngles.EqualLegs(2000, 2, 60), 1);

    [Fact]
    public void Tension_factor_by_length_and_height()
    {
        Near.Within(1500, 1200 * SlingAngles.Factor(Math.Asin(96 / 120.0) * 180 / Math.PI), 1e-9);
        Near.Within(7000, 8000 * SlingAngles.Reduction(Math.Asin(84 / 96.0) * 180 / Math.PI), 1e-9);
    }

    [Fact]
    public void Lesson_2_block_with_a_rope_at_a_right_angle() => Near.AsPrinted("282.84", SlingAngles.OnBlock(200, 90));

    [Theory]
    [InlineData(90, 1.000, 1.000)]
    [InlineData(85, 1.004, 0.996)]
    [InlineData(80, 1.015, 0.985)]
    [InlineData(75, 1.035, 0.966)]
    [InlineData(70, 1.064, 0.940)]
    [InlineData(65, 1.104, 0.906)]
    [InlineData(60, 1.155, 0.866)]
    [InlineData(55, 1.221, 0.819)]
    [InlineData(50, 1.305, 0.766)]
    [InlineData(45, 1.414, 0.707)]
    [InlineData(40, 1.555, 0.643)]
    [InlineData(35, 1.742, 0.574)]
    [InlineData(30, 2.000, 0.500)]
    public void Table_of_angle_factors_which_sources_cut_or_round(double fromHorizontal, double factor, double reduction)
    {
        Near.Within(factor, SlingAngles.Factor(fromHorizontal), 0.002);
        Near.Within(reduction, SlingAngles.Reduction(fromHorizontal), 0.002);
    }

    [Fact]
    public void Lesson_14_three_legs_worked_out_here()
    {
        var even = ThreeLegBridle.FromApex(1000, new(0, 0, 0), new(-3, -2, 6), new(3, -2, 6), new(0, 4, 6));
        Compare(even, "7.0 7.0 7.2111", "388.889 388.889 400.617");
        var uneven = ThreeLegBridle.FromApex(1000, new(0, 0, 0), new(-4, -3, 10), new(5, -3, 9), new(0, 6, 8));
        Compare(uneven, "11.1803 10.7238 10.0", "458.211 351.600 368.852");
        Assert.Empty(uneven.Slack);
    }

    [Fact]
    public void Three_legs_from_their_lengths()
    {
        RiggingPoint[] anchors = [new(-4, -3, 10), new(5, -3, 9), new(0, 6, 8)];
        var bridle = ThreeLegBridle.FromLengths(1000, anchors, [.. anchors.Select(anchor => anchor.Length)])!;
        Near.Within(0, bridle.Apex.Length, 1e-9);
        Compare(bridle, "11.1803 10.7238 10.0", "458.211 351.600 368.852");
        Assert.Null(ThreeLegBridle.FromLengths(1000, anchors, [2, 2, 2]));
    }

    [Fact]
    public void Symmetric_legs_share_evenly_W_is_3_T_cos_theta()
    {
        var (r, h) = (2.0, 5.0);
        var bridle = ThreeLegBridle.FromApex(1000, new(0, 0, 0), new(r, 0, h), new(-r / 2, r * Math.Sqrt(3) / 2, h), new(-r / 2, -r * Math.Sqrt(3) / 2, h));
        Assert.All(bridle.Legs, leg => Near.Within(1000 / (3 * Math.Cos(Math.Atan2(r, h))), leg.Tension, 1e-9));
    }

    [Fact]
    public void Apex_outside_the_triangle_leaves_a_leg_slack() =>
        Assert.Equal([2], ThreeLegBridle.FromApex(1000, new(0, -3, 0), new(-3, -2, 6), new(3, -2, 6), new(0, 4, 6)).Slack);

    private static void Compare(ThreeLegBridle bridle, string lengths, string tensions)
    {
        foreach (var (leg, (length, tension)) in bridle.Legs.Zip(lengths.Split(' ').Zip(tensions.Split(' '))))
        {
            Near.AsPrinted(length, leg.Length);
            Near.AsPrinted(tension, leg.Tension);
        }
    }
}
