using Advance.Planning;
using Advance.Reading;
using Advance.Tests.Reading;

namespace Advance.Tests.Planning.Rigging;

/// <summary>A hang on two picks, each over a bridle of its own: holes 0.44 m one behind the other, so that level they are 0.22 m to either side of its place.</summary>
public sealed class HangBridleTests
{
    private const string Steels = """

          steel-1: {name: Steel 1 m, owned: 12, weight: 1 kg weighed, lifting: {made: steel, rating: 2000 kg, length: 1 m, stretch: 0.4 %}}
          steel-half: {name: Steel 0.5 m, owned: 12, weight: 1 kg weighed, lifting: {made: steel, rating: 2000 kg, length: 0.5 m, stretch: 0.4 %}}
          chain: {name: Chain 0.9 m, owned: 8, weight: 2 kg weighed, lifting: {made: chain, rating: 2000 kg, length: 0.9 m, step: 45 mm}}
          shackle: {name: Shackle, owned: 40, weight: 0.5 kg weighed, lifting: {made: shackle, rating: 3000 kg, length: 60 mm}}
        """;

    private const string Venue = """
        venue: A hall
        roof-points:
          P1: {place: SR 4.5 m DS 1.22 m, height: 8 m, limit: 600 kg, sideways: 500 kg}
          P2: {place: SR 1.5 m DS 1.22 m, height: 8 m, limit: 600 kg, sideways: 500 kg}
          P3: {place: SR 4.5 m DS 0.78 m, height: 8 m, limit: 600 kg, sideways: 500 kg}
          P4: {place: SR 1.5 m DS 0.78 m, height: 8 m, limit: 600 kg, sideways: 500 kg}
        """;

    [Theory]
    [InlineData("level", 0.22)]
    [InlineData("nose-down 20 deg", 0.2067)] // 0.22 · cos 20°
    public void The_hook_of_each_is_wanted_under_its_own_hole(string tilt, double apart)
    {
        var plan = Plan($"tilt: {tilt}", "{hole: 1, hoist: hoist-500, points: [B1]}, {hole: 12, hoist: hoist-500, points: [B2]}");
        Assert.Equal([-1 - apart, -1 + apart], plan.Rigging.Bridles.Select(bridle => bridle.Placed.Wanted!.Value.Y), Near);
        Assert.All(plan.Rigging.Bridles, bridle => Assert.Equal(-3, bridle.Placed.Wanted!.Value.X, 1e-9));
        Assert.All(plan.Rigging.Bridles.Zip(plan.Rigging.Picks), pair =>
        {
            Assert.Equal(pair.Second.Spot!.Value.X, pair.First.Placed.Wanted!.Value.X, 1e-9);
            Assert.Equal(pair.Second.Spot!.Value.Y, pair.First.Placed.Wanted!.Value.Y, 1e-9);
        });
    }

    [Fact]
    public void Its_legs_are_made_of_the_stock_and_pulled()
    {
        var plan = Plan("tilt: level", "{hole: 1, hoist: hoist-500, points: [B1]}, {hole: 12, hoist: hoist-500, points: [B2]}");
        foreach (var bridle in plan.Rigging.Bridles)
        {
            var apex = bridle.Placed.Apex!.Value;
            Assert.False(bridle.Placed.IsOff);
            Assert.InRange((apex - bridle.Placed.Wanted!.Value).Length, 0, 0.05);
            Assert.All(bridle.Placed.Legs.Zip(bridle.Placed.Anchors), leg => Assert.Equal(leg.First.Made!.Length, (leg.Second - apex).Length, 1e-9));
            Assert.All(bridle.Legs.SelectMany(leg => leg.Placed.Gear), piece => Assert.Contains(piece, plan.Pieces));
            Assert.Equal(1, bridle.Legs.Sum(leg => leg.Share.Value!.Value), 1e-9);
            Assert.All(bridle.Legs.SelectMany(leg => leg.Parts), part => Assert.NotNull(part.Carries.Value));
        }
    }

    [Theory]
    [InlineData("tilt: TBC", "{hole: 1, hoist: hoist-500, points: [B1]}, {hole: 12, hoist: hoist-500, points: [B2]}")]
    [InlineData("tilt: level", "{hole: 1, hoist: hoist-500, points: [B1]}, {hole: TBC, hoist: hoist-500, points: [B2]}")]
    [InlineData("tilt: level", "{hole: 1, hoist: hoist-500, points: [B1]}, {hoist: hoist-500, points: [B2]}")]
    public void Where_nobody_knows_where_a_pick_is_it_says_that(string tilt, string picks)
    {
        var plan = Plan(tilt, picks);
        Assert.All(plan.Rigging.Bridles, bridle => Assert.Null(bridle.Placed.Apex));
        Assert.Equal(["Main-1", "Main-2"], plan.Rigging.Bridles.Select(bridle => bridle.Placed.Lost));
        Assert.Equal(2, plan.Findings.Count(finding => finding.Rule == "rigging/not-judged" && finding.Says.ToString().Contains("nobody knows where that is", StringComparison.Ordinal)));
    }

    private static bool Near(double one, double other) => Math.Abs(one - other) < 1e-4;

    private static Plan Plan(string tilt, string picks)
    {
        var gig = $"""
            gig: Hang on bridles
            day: Sat 12 Sep 2026
            stock: stock.yaml
            venue: venue.yaml
            sound:
              hangs:
                Main:
                  place: SR 3 m DS 1 m
                  aim: straight
                  from-top-down: [frame, 2 x hang-8]
                  splays: [0 deg, 0 deg]
                  {tilt}
                  trim: 4 m above floor
                  picks: [{picks}]
            rigging:
              bridles:
                B1: {"{points: [P1, P2], drop: 1.2 m}"}
                B2: {"{points: [P3, P4], drop: 1.2 m}"}
            """;
        var stock = File.ReadAllText(Path.Combine(RuleCase.Folder, "shop-hang/stock.yaml")).TrimEnd() + Steels;
        var read = BriefReader.Read(MemoryDoor.Of(("gig.yaml", gig), ("stock.yaml", stock), ("venue.yaml", Venue)), "gig.yaml");
        Assert.True(read.Brief is not null, string.Join("\n", read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
        return Planner.Plan(read.Brief);
    }
}
