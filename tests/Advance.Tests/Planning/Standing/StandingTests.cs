using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;

namespace Advance.Tests.Planning.Standing;

/// <summary>What stands, against sums done by hand on paper.</summary>
public sealed class StandingTests
{
    private const double Gravity = 9.80665;

    /// <summary>A sub of 52 kg, 0.6 x 0.7 x 0.6 m, and a top of 27 kg, 0.36 x 0.38 x 0.55 m, joined, in a gust of 20 m/s; the ground falls 1° to SL.</summary>
    private const string Stack = """
        gig: By hand
        day: Sat 12 Sep 2026
        venue: venue.yaml
        stock: stock
        wind: {gust: 20 m/s}
        sound:
          stacks:
            Main:
              place: DS 1 m
              from-floor-up: [sub, top]
        """;

    private const string Venue = """
        venue: A field
        hall: {open-air: yes}
        ground: {friction: 0.5, slope: 1 deg, falls-to: SL, bearing: 100 kN/m2}
        access: TBC
        """;

    [Fact]
    public void Tips_over_its_rear_edge_as_worked_out_by_hand()
    {
        var item = Only(Stack, Venue);
        var edge = item.Whole.Edges.Single(edge => edge.Name == "rear edge");

        // The plan is near square and its side larger than its front: the wind onto a corner counts, half of both for this edge.
        const double Lever = 1.4 * ((((0.6 * 0.6) + (0.7 * 0.6)) / 2 * 0.3) + (((0.36 * 0.55) + (0.38 * 0.55)) / 2 * (0.6 + 0.275)));
        const double Moment = 1.25 / 2 * 20 * 20 * Lever;
        Assert.Equal(0.35, edge.Inside.Value!.Value.Meters, 9);
        Assert.Equal(Math.Atan(0.35 / (((52 * 0.3) + (27 * 0.875)) / 79)) * 180 / Math.PI, edge.Angle.Value!.Value.Degrees, 9);
        Assert.Equal(Moment, edge.Moment!.Value!.Value.NewtonMeters, 6);
        Assert.Equal(Gravity * 79 * 0.35 / Moment, edge.Tipping!.Value!.Value, 9);
        Assert.Equal(20 * Math.Sqrt(Gravity * 79 * 0.35 / (1.5 * Moment)), edge.TippingGust!.Value!.Value.MetersPerSecond, 9);
        Assert.StartsWith("the front S", edge.From, StringComparison.Ordinal);
    }

    [Fact]
    public void Slides_down_the_slope_in_the_wind_onto_a_corner()
    {
        var edge = Only(Stack, Venue).Whole.Edges.Single(edge => edge.Name == "SL edge");
        const double Front = (0.6 * 0.6) + (0.36 * 0.55);
        const double Side = (0.7 * 0.6) + (0.38 * 0.55);
        var push = 1.25 / 2 * 20 * 20 * 1.4 * (Front + Side) / Math.Sqrt(2);
        var slope = Math.PI / 180;
        Assert.Equal(1, edge.Slope.Value!.Value.Degrees, 9);
        Assert.Equal(push, edge.Push!.Value!.Value.Newtons, 6);
        Assert.Equal(Gravity * 79 * ((0.5 * Math.Cos(slope)) - Math.Sin(slope)) / push, edge.Sliding!.Value!.Value, 9);
        Assert.Equal((0.3 * Math.Cos(slope)) - (((52 * 0.3) + (27 * 0.875)) / 79 * Math.Sin(slope)), edge.Arm.Value!.Value.Meters, 9);
    }

    /// <summary>What is turned to face SL has its front edge downhill, what is turned the other way its rear edge.</summary>
    [Theory]
    [InlineData("8 m", "front edge")]
    [InlineData("-8 m", "rear edge")]
    public void A_turned_stack_takes_its_edges_along(string across, string downhill)
    {
        var item = Only(Stack.Replace("place: DS 1 m", $"place: DS 1 m\n      aim: at [{across}, -1 m]", StringComparison.Ordinal), Venue);
        var steepest = item.Whole.Edges.MaxBy(edge => edge.Slope.Value!.Value.Degrees)!;
        Assert.Equal(downhill, steepest.Name);
        Assert.Equal(1, steepest.Slope.Value!.Value.Degrees, 6);
    }

    [Fact]
    public void The_ballast_that_is_missing_is_enough()
    {
        var lacking = Only(Stack, Venue).Ballast!.Value!.Value.Kilograms;
        Assert.True(lacking > 0);
        Assert.Equal(0, Ballasted(lacking + 0.01).Ballast!.Value!.Value.Kilograms);
        Assert.True(Ballasted(lacking - 1).Ballast!.Value!.Value.Kilograms > 0);

        static StandingItem Ballasted(double mass) => Only(
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Stack}\n      ballast: [{{item: block, weight: {mass:0.###} kg weighed, held: fixed}}]"), Venue);
    }

    [Fact]
    public void Higher_than_the_gust_was_stated_it_is_windier()
    {
        var low = Only(Stack.Replace("{gust: 20 m/s}", "{gust: 20 m/s, height: 0.6 m, terrain: open country}", StringComparison.Ordinal), Venue);
        Assert.Equal(20, Only(Stack, Venue).Gust.Value!.Value.MetersPerSecond, 9);
        Assert.Equal(20, low.Gust.Value!.Value.MetersPerSecond, 9); // both under the 2 m where the profile begins
        var tall = Only(Stack.Replace("[sub, top]", "[4 x sub]", StringComparison.Ordinal).Replace("{gust: 20 m/s}", "{gust: 20 m/s, height: 2 m}", StringComparison.Ordinal), Venue);
        Assert.True(tall.Gust.Value!.Value.MetersPerSecond > 20.2);
    }

    [Fact]
    public void Weight_that_nobody_weighed_counts_for_nine_tenths() =>
        Assert.Equal(52 + (27 * 0.9), Only(Stack, Venue, Stock.Replace("27 kg weighed", "27 kg maker", StringComparison.Ordinal)).Whole.Holds.Value!.Value.Kilograms, 9);

    [Fact]
    public void An_open_friction_travels_into_every_figure_that_rests_on_it()
    {
        var item = Only(Stack, Venue.Replace("friction: 0.5", "friction: 0.5 TBC Hal by 4 Sep", StringComparison.Ordinal));
        Assert.All(item.Whole.Edges, edge => Assert.NotEmpty(edge.Sliding!.RestsOn));
        Assert.All(item.Whole.Edges, edge => Assert.Empty(edge.Tipping!.RestsOn));
        Assert.NotEmpty(item.Limit!.RestsOn);
    }

    private const string Stock = """
        department: sound
        kinds:
          sub: {name: Sub, role: loudspeaker, owned: 8, size: 0.6 x 0.7 x 0.6 m, weight: 52 kg weighed, loudspeaker: {sub: yes, top: sub-top, below: sub-foot}}
          top: {name: Top, role: loudspeaker, owned: 8, size: 0.36 x 0.38 x 0.55 m, weight: 27 kg weighed, loudspeaker: {top: top-top, below: top-foot}}
          foot: {name: Foot, role: joint, owned: 8, weight: 2 kg weighed, joint: {below: sub-top, above: top-foot, pieces: 1, pins: 2, use: standing}}
          block: {name: Block, owned: 9, weight: 25 kg weighed}
        """;

    private static StandingItem Only(string gig, string venue, string stock = Stock)
    {
        var folder = Directory.CreateTempSubdirectory("standing").FullName;
        try
        {
            Directory.CreateDirectory(Path.Combine(folder, "stock"));
            File.WriteAllText(Path.Combine(folder, "gig.yaml"), gig + "\n");
            File.WriteAllText(Path.Combine(folder, "venue.yaml"), venue + "\n");
            File.WriteAllText(Path.Combine(folder, "stock", "stock.yaml"), stock + "\n");
            var read = BriefReader.Read(new FolderDoor(folder), "gig.yaml");
            Assert.True(read.Brief is not null, string.Join("\n", read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
            return Planner.Plan(read.Brief).Standing.Items.Single();
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
