using System.Globalization;
using Advance.Planning;
using Advance.Reading;
using Advance.Tests.Reading;

namespace Advance.Tests.Planning.Rigging;

/// <summary>
/// Hangs that a line pulls back, by statics written out. Frame 30 kg, its centre 0.2 m behind its front pin and 0.05 m above; boxes of 26 kg with their links, 0.25 m from pin
/// to pin, 0.4 m deep, their centres 0.18 m behind the pin and 0.125 m below; links 0.35 m behind the pin; holes 0.02 and 0.46 m behind it and 0.1 m above.
/// </summary>
public sealed class HangPullTests
{
    private const double Gravity = 9.80665;
    private const double Moving = 1.25;
    private const string TwoPicks = "[{hole: 1, hoist: hoist-500, points: [P1]}, {hole: 12, hoist: hoist-500, points: [P2]}]";
    private const string OnePick = "[{hole: 6, hoist: hoist-500, points: [P1]}]";

    public static TheoryData<string, string, string, double, double> Any => new()
    {
        { "[0 deg, 0 deg]", "level", TwoPicks, 10, 30 },
        { "[0 deg, 0 deg]", "level", TwoPicks, 60, 30 },
        { "[2 deg, 4 deg, 6 deg, 8 deg]", "nose-down 5 deg", TwoPicks, 15, 0 },
        { "[2 deg, 4 deg, 6 deg, 8 deg]", "nose-up 4 deg", TwoPicks, 40, 60 },
        { "[0 deg, 1 deg, 2 deg]", "level", OnePick, 25, 45 },
        { "[0 deg, 1 deg, 2 deg, 8 deg, 8 deg]", "level", OnePick, 8, 10 },
    };

    // The pull of 60 kg, 30° up, at 0.4 m behind the pins and 0.5 m below the upper: about that pin 60 · (0.5 · 0.4 + 0.8660 · 0.5) = 37.98 kgm against 52 · 0.18 = 9.36 kgm
    // of weight: the link pushes with 28.62 / 0.35 = 81.77 kg, where it pulled 26.74 before. Pins: 51.96 to the rear; 52 - 30 + 81.77 = 103.77 up.
    [Fact]
    public void A_strong_pull_makes_the_link_push()
    {
        var first = Hang("[0 deg, 0 deg]", "level", TwoPicks, 60, 30).Boxes[0];
        Assert.Equal(-81.77 * Gravity * Moving, first.Rear.Value!.Value.Newtons, 0.1);
        Assert.Equal(Math.Sqrt((51.96 * 51.96) + (103.77 * 103.77)) * Gravity * Moving, first.Front.Value!.Value.Newtons, 0.2);
    }

    // 10 kg, 30° up: (9.36 - 6.33) / 0.35 = 8.66 kg, and 26.74 kg before it is pulled back. Pins 8.66 to the rear and 52 - 5 - 8.66 = 38.34 up: 39.31 kg.
    [Fact]
    public void A_weak_pull_leaves_the_link_as_it_was_before_it_is_pulled_back()
    {
        var first = Hang("[0 deg, 0 deg]", "level", TwoPicks, 10, 30).Boxes[0];
        Assert.Equal(52 * 0.18 / 0.35 * Gravity * Moving, first.Rear.Value!.Value.Newtons, 1e-6);
        Assert.Equal(39.31 * Gravity * Moving, first.Front.Value!.Value.Newtons, 0.1);
    }

    // Nine tenths on the front: all of it, 82 kg with its centre 0.1873 m behind and 0.1402 m below the front pin, hangs below a place 0.064 m behind it and 0.1 m above.
    // The pull is 0.336 m behind that and 0.6 m below. 10 · (0.5 · 0.336 + 0.8660 · 0.6) = 6.876; 82 · (0.064 - 0.1873) = -10.112: together -3.236 kgm, against
    // 82 · 0.2402 + 10 · (0.8660 · 0.336 - 0.5 · 0.6) = 19.61 kgm: atan(-0.16501) = -9.370°. One tenth: 0.416 m behind: e = 0.016 ahead, 5.116 - 0.08; 82 · 0.2287 = 18.752.
    [Fact]
    public void Both_picks_carry_within_a_range_that_the_pull_turns_nose_down()
    {
        var hang = Hang("[0 deg, 0 deg]", "level", TwoPicks, 10, 30);
        Assert.Equal(-9.370, hang.LeastTilt.Value!.Value.Degrees, 0.002);
        var held = (82 * 0.240244) - (10 * ((0.5 * 0.6) + (0.8660254 * 0.016)));
        Assert.Equal(Math.Atan(((82 * (0.416 - 0.187317)) + (10 * ((0.8660254 * 0.6) - (0.5 * 0.016)))) / held) * 180 / Math.PI, hang.MostTilt.Value!.Value.Degrees, 0.002);
    }

    [Theory]
    [InlineData("[0 deg, 0 deg]", 10, 30)]
    [InlineData("[2 deg, 4 deg, 6 deg, 8 deg]", 30, 20)]
    [InlineData("[2 deg, 4 deg, 6 deg, 8 deg]", 20, -10)]
    public void At_the_ends_of_the_range_one_pick_has_a_tenth(string splays, double pull, double up)
    {
        var hang = Hang(splays, "level", TwoPicks, pull, up);
        Assert.Equal(0.9, FrontShare(Hang(splays, Words(hang.LeastTilt.Value!.Value.Degrees), TwoPicks, pull, up)), 1e-6);
        Assert.Equal(0.1, FrontShare(Hang(splays, Words(hang.MostTilt.Value!.Value.Degrees), TwoPicks, pull, up)), 1e-6);
    }

    [Theory]
    [MemberData(nameof(Any))]
    public void Link_and_pins_hold_what_hangs_below_and_the_pull_whichever_is_more(string splays, string tilt, string picks, double pull, double up)
    {
        var (hang, loose) = (Hang(splays, tilt, picks, pull, up), Hang(splays, tilt, picks, null, 0));
        for (var index = 0; index < hang.Boxes.Count; index++)
        {
            var (rear, front) = Statics(hang.State!, index, pull, up);
            var before = Statics(loose.State!, index, 0, 0);
            Assert.Equal(Math.Abs(rear) > Math.Abs(before.Rear) ? rear : before.Rear, hang.Boxes[index].Rear.Value!.Value.Newtons, 1e-6);
            Assert.Equal(Math.Max(front, before.Front), hang.Boxes[index].Front.Value!.Value.Newtons, 1e-6);
        }
    }

    [Theory]
    [MemberData(nameof(Any))]
    public void A_pull_of_nothing_is_no_pull(string splays, string tilt, string picks, double pull, double up)
    {
        Assert.True(pull > 0);
        var (hang, free) = (Hang(splays, tilt, picks, 0, up), Hang(splays, tilt, picks, null, 0));
        Assert.Equal(free.Tilt.Value!.Value.Degrees, hang.Tilt.Value!.Value.Degrees, 1e-9);
        Assert.Equal(free.LeastTilt.Value?.Degrees ?? 0, hang.LeastTilt.Value?.Degrees ?? 0, 1e-9);
        Assert.Equal(free.MostTilt.Value?.Degrees ?? 0, hang.MostTilt.Value?.Degrees ?? 0, 1e-9);
        Assert.All(free.Boxes.Zip(hang.Boxes), pair => Assert.Equal(pair.First.Rear.Value!.Value.Newtons, pair.Second.Rear.Value!.Value.Newtons, 1e-6));
        Assert.All(free.Boxes.Zip(hang.Boxes), pair => Assert.Equal(pair.First.Front.Value!.Value.Newtons, pair.Second.Front.Value!.Value.Newtons, 1e-6));
        Assert.All(free.Picks.Zip(hang.Picks), pair => Assert.Equal(pair.First.Pick.Moving.Value!.Value.Kilograms, pair.Second.Pick.Moving.Value!.Value.Kilograms, 1e-9));
    }

    // 52 + 30 kg on one hoist, and the line takes 25 · sin 45° of it: but not before it is fixed.
    [Fact]
    public void Its_hoist_lifts_all_of_it_before_it_is_pulled_back()
    {
        var pick = Hang("[0 deg, 0 deg]", "level", OnePick, 25, 45).Picks.Single().Pick;
        Assert.Equal(82 - (25 * Math.Sqrt(0.5)), pick.Level.Value!.Value.Kilograms, 1e-9);
        Assert.Equal(82, pick.Moving.Value!.Value.Kilograms, 1e-9);
        Assert.Equal("before it is pulled back", pick.MovingCase!.ToString());
    }

    // Held so far down that without the line its front pick is slack, it hangs on the rear one until it is pulled back.
    [Fact]
    public void Before_it_is_pulled_back_it_tilts_no_further_than_both_picks_hold_it()
    {
        var hang = Hang("[0 deg, 0 deg]", "nose-down 60 deg", TwoPicks, 8, 30);
        var rear = Hang("[0 deg, 0 deg]", "level", "[{hole: 12, hoist: hoist-500, points: [P1]}]", null, 0);
        Assert.Equal(Math.Atan((0.46 - 0.187317) / 0.240244) * 180 / Math.PI, rear.Tilt.Value!.Value.Degrees, 1e-3);
        Assert.Equal(rear.Boxes[0].Rear.Value!.Value.Newtons, hang.Boxes[0].Rear.Value!.Value.Newtons, 1e-6);
    }

    [Fact]
    public void Where_nobody_knows_how_deep_the_lowest_box_is_it_cannot_be_worked_out()
    {
        var hang = Hang("[0 deg, 0 deg]", "level", TwoPicks, 10, 30, stock => stock.Replace("back: 0.4 m", "back: TBC", StringComparison.Ordinal));
        Assert.Contains("how deep its lowest box is, which it is pulled back by", hang.Missing);
        Assert.Null(hang.Boxes[0].Rear.Value);
    }

    // About the front pin everything below turns to nothing: the link takes what weight and pull leave, and the pins the rest of all forces.
    private static (double Rear, double Front) Statics(HangState state, int index, double pull, double up)
    {
        var (pin, below) = (state.Boxes[index].Pin, state.Boxes.Skip(index).ToList());
        var edge = HangEdge(state);
        List<(SidePoint At, SidePoint Force)> forces =
        [
            .. below.Select(box => (box.Centre, new SidePoint(0, -box.Box.Weight))),
            (edge, new SidePoint(-pull * Gravity * Math.Cos(up * Math.PI / 180), pull * Gravity * Math.Sin(up * Math.PI / 180))),
        ];
        var tilt = (index == 0 ? state.Tilt : state.Boxes[index - 1].Tilt).Radians;
        var (link, along) = (pin.Along(tilt, -state.Boxes[index].Box.LinkArm!.Value, 0), default(SidePoint).Along(tilt, 0, -1));
        var rear = -forces.Sum(one => Turn(pin, one.At, one.Force)) / Turn(pin, link, along);
        var (x, z) = (forces.Sum(one => one.Force.X) + (rear * along.X), forces.Sum(one => one.Force.Z) + (rear * along.Z));
        return (rear * Moving, Math.Sqrt((x * x) + (z * z)) * Moving);
    }

    private static SidePoint HangEdge(HangState state)
    {
        var last = state.Boxes[^1];
        return last.LowerPin.Along(last.Tilt.Radians, -last.Box.Behind, 0);
    }

    private static double Turn(SidePoint about, SidePoint at, SidePoint force) => ((at.X - about.X) * force.Z) - ((at.Z - about.Z) * force.X);

    private static double FrontShare(HangPlan hang) =>
        hang.Picks[0].Pick.Level.Value!.Value.Kilograms / hang.Picks.Sum(pick => pick.Pick.Level.Value!.Value.Kilograms);

    private static string Words(double degrees) => string.Create(CultureInfo.InvariantCulture, $"nose-{(degrees < 0 ? "up" : "down")} {Math.Abs(degrees):0.######} deg");

    private static HangPlan Hang(string splays, string tilt, string picks, double? pull, double up, Func<string, string>? change = null)
    {
        var line = pull is null ? "" : string.Create(CultureInfo.InvariantCulture, $"      pull-back: {{pull: {pull} kg, up: {up} deg, to: rear truss}}\n");
        var boxes = splays.Split(',').Length;
        var gig = $"gig: Pulled\nday: Sat 12 Sep 2026\nstock: stock.yaml\nvenue: venue.yaml\nsound:\n  hangs:\n    Main:\n      place: SR 5 m DS 0.78 m\n      from-top-down: [frame, {boxes} x hang-8]\n      splays: {splays}\n      {(picks == TwoPicks ? $"tilt: {tilt}\n      " : "")}trim: 4 m above floor\n{line}      picks: {picks}\n";
        var files = MemoryDoor.Of(("gig.yaml", gig), ("stock.yaml", (change ?? (text => text))(Case("shop-hang/stock.yaml"))), ("venue.yaml", Case("shop-hang/venue.yaml")));
        var read = BriefReader.Read(files, "gig.yaml");
        Assert.True(read.Brief is not null, string.Join("\n", read.Findings.Select(finding => $"{finding.At} {finding.Says}")));
        var plan = Planner.Plan(read.Brief);
        Assert.All(plan.Figures.Where(stated => stated.How is not null), stated => Assert.Null(Workings.ByHand.Fault(stated.How!)));
        return plan.Rigging.Hangs.Single();
    }

    private static string Case(string file) => File.ReadAllText(Path.Combine(RuleCase.Folder, file));
}
