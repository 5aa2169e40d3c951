using Advance.Planning;
using Advance.Reading;
using Advance.Reading.Files;
using Advance.Sheets;
using Advance.Tests.Reading;

namespace Advance.Tests.Planning.Rigging;

/// <summary>Hangs of the rule cases, checked by hand with the rules of statics; and hangs that nobody would write, which must not break anything.</summary>
public sealed class HangPlanTests
{
    // Frame 30 kg, its centre 0.2 m behind the pin; two boxes of 25 kg with two links of 0.5 kg each, their centres 0.18 m behind it; holes 0.02 and 0.46 m.
    private const string TwoBoxesLevel = "rigging/hang-pick-slack/between.yaml";

    [Fact]
    public void Two_picks_share_it_by_where_its_centre_of_gravity_is()
    {
        var hang = Plan(TwoBoxesLevel).Rigging.Hangs.Single();
        var centre = ((30 * -0.2) + (2 * 26 * -0.18)) / 82;
        Assert.Equal(82, hang.Weight.Value!.Value.Kilograms, 9);
        Assert.Equal(centre, hang.Centre.Value!.Value.Meters, 9);
        Assert.Equal(82 * (centre + 0.46) / 0.44, hang.Picks[0].Pick.Level.Value!.Value.Kilograms, 9);
        Assert.Equal(82, hang.Picks.Sum(pick => pick.Pick.Level.Value!.Value.Kilograms), 9);
    }

    [Fact]
    public void Its_lowest_edge_is_where_it_was_said_and_its_hole_as_much_higher_as_it_is_long()
    {
        var hang = Plan(TwoBoxesLevel).Rigging.Hangs.Single();
        Assert.Equal(0.1 + (2 * 0.25), hang.Drop.Value!.Value.Meters, 9);
        Assert.Equal(5, hang.Bottom.Value!.Value.Meters, 9);
        Assert.Equal(5.6, hang.PickHeight.Value!.Value.Meters, 9);
    }

    [Fact]
    public void Link_and_front_pins_hold_what_hangs_below_moving()
    {
        var first = Plan(TwoBoxesLevel).Rigging.Hangs.Single().Boxes[0];
        var link = 1.25 * 9.80665 * 52 * 0.18 / 0.35;
        Assert.Equal(link, first.Rear.Value!.Value.Newtons, 6);
        Assert.Equal((1.25 * 9.80665 * 52) - link, first.Front.Value!.Value.Newtons, 6);
    }

    [Fact]
    public void On_one_pick_its_centre_of_gravity_comes_under_the_hole()
    {
        var hang = Plan("rigging/side-pull/under-it.yaml").Rigging.Hangs.Single();
        var hole = hang.State!.PlaceOf(PickHole.Of(hang.Picks[0].Hole!));
        Assert.Equal(hole.X, hang.State.Centre.X, 9);
        Assert.Equal(hole.X, hang.Centre.Value!.Value.Meters, 9);
    }

    [Fact]
    public void What_hangs_on_a_truss_is_load_of_the_truss()
    {
        var plan = Plan("rigging/truss-rolls/a-hang-under-it.yaml");
        var (truss, hang) = (plan.Rigging.Trusses.Single(), plan.Rigging.Hangs.Single());
        var load = Assert.Single(truss.Loads, load => load.What.StartsWith("hang", StringComparison.Ordinal));
        Assert.Equal(hang.Picks[0].Pick.PointAtRest.Value, load.Weight.Value);
        Assert.Equal(3, load.From!.Value, 9);
        Assert.Equal(plan.Rigging.Points.Sum(point => point.AtRest.Value!.Value.Kilograms), plan.Rigging.Roof!.Value!.Value.Kilograms, 6);
    }

    [Fact]
    public void Wind_on_a_hang_comes_on_its_points_as_they_carry_it()
    {
        var rigging = Plan("rigging/hang-swings/in-the-open.yaml").Rigging;
        var push = rigging.Hangs.Single().Wind!.Push.Value!.Value.Newtons / 9.80665;
        Assert.Equal(push, rigging.Points.Sum(point => point.Pushed!.Value!.Value.Kilograms), 9);
        Assert.All(rigging.Points, point => Assert.Equal(
            push * point.AtRest.Value!.Value.Kilograms / rigging.Roof!.Value!.Value.Kilograms, point.Pushed!.Value!.Value.Kilograms, push * 0.1));
    }

    // The level part of the line, 20 kg at 30 degrees, and to the rear, which is upstage of what looks at the audience.
    [Fact]
    public void A_pull_back_pulls_the_point_sideways_with_its_level_part()
    {
        const string Gig = """
            gig: Pulled back
            day: Sat 12 Sep 2026
            stock: stock.yaml
            venue: venue.yaml
            stage: {size: 10 x 6 m, height: 0 m above floor}
            sound:
              hangs:
                Main:
                  place: SR 5 m DS 1 m
                  aim: straight
                  from-top-down: [frame, 4 x hang-8]
                  splays: [0 deg, 0 deg, 0 deg, 0 deg]
                  trim: 4 m above floor
                  pull-back: {pull: 20 kg, up: 30 deg, to: rear truss}
                  picks: [{hole: 7, points: [P1]}]
            """;
        var files = MemoryDoor.Of(("gig.yaml", Gig), ("stock.yaml", Case("shop-hang/stock.yaml")), ("venue.yaml", Case("shop-hang/venue.yaml")));
        var point = Planner.Plan(BriefReader.Read(files, "gig.yaml").Brief!).Rigging.Points.Single();
        Assert.Equal(20 * Math.Cos(Math.PI / 6), point.Sideways.Value!.Value.Kilograms, 9);
        Assert.Equal(0, point.Bearing!.Value, 9);
    }

    [Theory]
    [InlineData("from-top-down: [frame, hang-8]")]
    [InlineData("from-top-down: []")]
    [InlineData("from-top-down: [hang-8, hang-8]\n      splays: [0 deg, 0 deg]\n      picks: [{points: [P1]}]")]
    [InlineData("from-top-down: [frame, desk, hang-8]\n      splays: [0 deg]\n      tilt: level\n      trim: 1 m above deck\n      picks: [{hole: 1, points: TBC}]")]
    [InlineData("from-top-down: [frame, 3 x nothing-known]\n      splays: TBC\n      picks: [{points: [P1]}]")]
    [InlineData("from-top-down: [frame, 2 x hang-8]\n      splays: [0 deg, 0 deg]\n      tilt: level\n      trim: 0.1 m above floor\n      picks: [{hole: 1, points: [P1]}, {hole: 1, points: [P1]}]")]
    [InlineData("from-top-down: [frame, 2 x hang-8]\n      splays: [0 deg, 0 deg]\n      tilt: nose-down 120 deg\n      pick-trim: 1 m above floor\n      picks: [{hole: 1, points: [P1]}, {hole: 12, points: [P2]}]")]
    [InlineData("from-top-down: [frame, 2 x hang-8]\n      splays: [170 deg, 170 deg]\n      trim: 4 m above floor\n      picks: [{hole: 1, points: [P1]}]")]
    [InlineData("from-top-down: [frame, 2 x hang-8]\n      splays: [0 deg, TBC]\n      tilt: TBC\n      picks: [{hole: 1, points: [P1]}, {hole: 12, points: [P2]}, {hole: 6, points: [P2]}]")]
    [InlineData("from-top-down: [frame, 2 x hang-8]\n      splays: [0 deg, 0 deg]\n      trim: 4 m above floor\n      pull-back: {pull: 5 t, up: 80 deg, to: rear truss}\n      picks: [{hole: 1, points: [P1]}]")]
    [InlineData("from-top-down: [frame, 2 x hang-8]\n      splays: [0 deg, 0 deg]\n      tilt: nose-down 3 deg\n      trim: 4 m above floor\n      pull-back: {pull: TBC, up: 30 deg, to: rear truss}\n      picks: [{hole: 1, points: [P1]}, {hole: 12, points: [P2]}]")]
    [InlineData("from-top-down: [frame, 2 x hang-8]\n      splays: [0 deg, 0 deg]\n      tilt: nose-down 3 deg\n      trim: 4 m above floor\n      pull-back: {pull: 20 kg, up: 30 deg, to: rear truss}\n      picks: [{hole: 1, points: [P1]}, {hole: 12, points: [P2]}]")]
    public void Whatever_is_written_of_a_hang_gives_a_plan_and_its_workings_hold(string hang)
    {
        var gig = $"gig: Odd\nday: Sat 12 Sep 2026\nstock: stock.yaml\nvenue: venue.yaml\nsound:\n  hangs:\n    Main:\n      {hang}\n";
        var files = MemoryDoor.Of(("gig.yaml", gig), ("stock.yaml", Case("shop-hang/stock.yaml")), ("venue.yaml", Case("shop-hang/venue.yaml")));
        var read = BriefReader.Read(files, "gig.yaml");
        Assert.True(read.Brief is not null, string.Join("\n", read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
        var plan = Planner.Plan(read.Brief);
        Assert.Single(plan.Rigging.Hangs);
        Assert.All(plan.Figures.Where(stated => stated.How is not null), stated => Assert.Null(Workings.ByHand.Fault(stated.How!)));
        Assert.NotEmpty(PackageBuilder.Build(plan, new PackageRequest(["pdf"], ["hang-main"], null), CompanyFolder.None).Files);
    }

    private static string Case(string file) => File.ReadAllText(Path.Combine(RuleCase.Folder, file));

    private static Plan Plan(string file) => Planner.Plan(BriefReader.Read(new FolderDoor(RuleCase.Folder), file).Brief!);
}
