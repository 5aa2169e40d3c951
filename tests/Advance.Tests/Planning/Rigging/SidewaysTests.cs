using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>What pulls and pushes sideways, through a truss and its picks to the points, against sums by hand: statics, no source.</summary>
public sealed class SidewaysTests
{
    private const double Gravity = 9.80665;

    private const string Stock = """
        kinds:
          truss-3:
            name: Truss 3 m
            owned: 12
            weight: 18 kg weighed
            size: 3.00 x 0.30 x 0.30 m
            standing: {front-area: 0.4 m2, force-coefficient: 1.5}
            truss: {length: 3 m, bending-stiffness: 1700 kNm2, moment: 18 kNm, shear: 11 kN, for-used: yes, LIMITS}
          hoist: {name: Hoist, owned: 8, weight: 45 kg weighed, hoist: {lifts: 500 kg, holds: 500 kg}}
        """;

    private const string Hall = """
        venue: A hall
        roof-points:
          P1: {place: SR 3.5 m US 2 m, height: 8 m, limit: 600 kg, SAID}
          P2: {place: SL 3.5 m US 2 m, height: 8 m, limit: 600 kg}
        """;

    private const string Field = Hall + "\nwind: {gust: 12 m/s, height: 8 m}";

    [Fact]
    public void A_chain_that_leans_pulls_its_point_towards_the_pick_as_the_triangle_says()
    {
        var plan = Of(Hall, at: (0.5, 8.5));

        // Half a metre out, over 8 m less 4 m of trim and 0.3 m of truss.
        var pick = plan.Rigging.Picks[0];
        var pull = pick.PointAtRest.Value!.Value.Kilograms * 0.5 / 3.7;
        Assert.Equal(pull, pick.Lean!.Pull.Pull.Value!.Value.Kilograms, 1e-9);
        Assert.Equal(pull, plan.Rigging.Points[0].Sideways.Value!.Value.Kilograms, 1e-9);
        Assert.Equal(270, plan.Rigging.Points[0].Bearing!.Value, 1e-9);
        Assert.Equal(90, plan.Rigging.Points[1].Bearing!.Value, 1e-9);
        Assert.Equal(pull * Gravity, plan.Rigging.Trusses[0].Sideways.Pressed.Value!.Value.Newtons, 1e-6);
    }

    [Fact]
    public void What_presses_a_truss_takes_of_what_it_bears()
    {
        var truss = Of(Hall, at: (0.5, 8.5), limits: "pressed: 2 kN").Rigging.Trusses[0];

        Assert.Equal(truss.Together.Value!.Value + (truss.Sideways.Pressed.Value!.Value.Newtons / 2000), truss.Sideways.Together.Value!.Value, 1e-9);
    }

    [Fact]
    public void Plumb_chains_indoors_pull_and_push_nothing()
    {
        var plan = Of(Hall);

        Assert.False(plan.Rigging.Trusses[0].Sideways.IsPushed);
        Assert.All(plan.Rigging.Points, point => Assert.Equal(0, point.SidewaysMost.Value!.Value.Kilograms, 1e-9));
    }

    [Fact]
    public void A_line_that_pulls_a_truss_is_shared_by_the_lever_and_bends_it_sideways()
    {
        var plan = Of(Hall, load: "{truss: T1, what: loom to the wall, weight: 10 kg, along: 3 m, sideways: 40 kg}", limits: "sideways-moment: 9 kNm");

        // 2 m and 5 m from picks that are 7 m apart; bent most where it pulls: 40 · 2 · 5 / 7.
        Assert.Equal([40 * 5.0 / 7, 40 * 2.0 / 7], plan.Rigging.Picks.Select(pick => pick.Pushed!.Value!.Value.Kilograms), (one, other) => Math.Abs(one - other) < 1e-9);
        Assert.Equal(Gravity * 40 * 2 * 5 / 7, plan.Rigging.Trusses[0].Sideways.Moment.Value!.Value.NewtonMeters, 1e-6);
        Assert.Equal(40 * 5.0 / 7, plan.Rigging.Points[0].SidewaysMost.Value!.Value.Kilograms, 1e-9);
        Assert.Equal(plan.Rigging.Trusses[0].Together.Value!.Value + (Gravity * 40 * 2 * 5 / 7 / 9000), plan.Rigging.Trusses[0].Sideways.Together.Value!.Value, 1e-9);
    }

    [Fact]
    public void Wind_on_truss_and_cloth_goes_into_the_points()
    {
        var plan = Of(Field, load: "{truss: T1, what: net, weight: 300 kg, wind-area: 4 m2}");

        // 1.25 / 2 · 12² on three sections of 0.4 m² times 1.5; a cloth's coefficient is that of a sheet.
        var pressure = 0.625 * 144;
        var cloth = plan.Standing.Cloths.Single().Push.Value!.Value.Newtons;
        Assert.Equal(pressure * 4 * 1.8, cloth, 1e-6);
        var all = ((pressure * 3 * 0.4 * 1.5) + cloth) / Gravity;
        Assert.Equal(all, plan.Rigging.Picks.Sum(pick => pick.Pushed!.Value!.Value.Kilograms), 1e-6);
        Assert.Equal(all / 2, plan.Rigging.Points[1].SidewaysMost.Value!.Value.Kilograms, 1e-6);

        // Spread over 9 m with 1 m beyond each pick: w · (7² / 8 − 1² / 2).
        Assert.Equal(all * Gravity / 9 * ((49 / 8.0) - 0.5), plan.Rigging.Trusses[0].Sideways.Moment.Value!.Value.NewtonMeters, 1e-6);
    }

    [Fact]
    public void A_point_bears_sideways_what_its_venue_says_else_what_counts_as_plumb()
    {
        var plain = Of(Hall).Rigging.Points[0];
        Assert.Equal(plain.AtRest.Value!.Value.Kilograms * Math.Tan(3 * Math.PI / 180), plain.SidewaysLimit.Value!.Value.Kilograms, 1e-9);
        Assert.Equal(70, Of(Hall, said: "sideways: 70 kg").Rigging.Points[0].SidewaysLimit.Value!.Value.Kilograms, 1e-9);
        Assert.Equal(plain.AtRest.Value!.Value.Kilograms * Math.Tan(10 * Math.PI / 180), Of(Hall, said: "off-plumb: 10 deg").Rigging.Points[0].SidewaysLimit.Value!.Value.Kilograms, 1e-9);
    }

    [Fact]
    public void A_truss_bows_sideways_as_stiff_as_its_maker_says()
    {
        var truss = Of(Hall, load: "{truss: T1, what: line, weight: 10 kg, along: 4.5 m, sideways: 40 kg}", limits: "sideways-stiffness: 500 kNm2").Rigging.Trusses[0];

        // P L³ / 48 EI in the middle of 7 m.
        Assert.Equal(Gravity * 40 * 343 / (48 * 500e3), truss.Sideways.Bowed.Value!.Value.Meters, 1e-9);
        Assert.Null(Of(Hall, load: "{truss: T1, what: line, weight: 10 kg, along: 4.5 m, sideways: 40 kg}").Rigging.Trusses[0].Sideways.Bowed.Value);
    }

    [Theory]
    [InlineData(90, 1, 0)]
    [InlineData(270, 1, 0)]
    [InlineData(0, 0, 1)]
    [InlineData(120, 0.8660254037844386, 0.5)]
    public void A_point_that_may_be_pulled_along_one_line_is_judged_along_and_across_it(int line, double along, double across)
    {
        var point = Of(Hall, at: (0.5, 8.5), said: $"sideways: 70 kg, bearing: {line} deg").Rigging.Points[0];

        Assert.Equal(along * point.Sideways.Value!.Value.Kilograms, point.SidewaysMost.Value!.Value.Kilograms, 1e-9);
        Assert.Equal(across * point.Sideways.Value!.Value.Kilograms, point.Across!.Value!.Value.Kilograms, 1e-9);
        Assert.Equal(point.AtRest.Value!.Value.Kilograms * Math.Tan(3 * Math.PI / 180), point.AcrossLimit.Value!.Value.Kilograms, 1e-9);
    }

    [Fact]
    public void A_pick_by_the_lower_chords_leans_from_lower_down()
    {
        var pick = Of(Hall, at: (0.5, 8.5), holds: ", holds: lower").Rigging.Picks[0];

        Assert.Equal(4, pick.Lean!.Up.Value!.Value.Meters, 1e-9);
    }

    [Fact]
    public void Without_a_gust_nobody_knows_what_pushes()
    {
        var plan = Of(Hall + "\nhall: {open-air: yes}");

        Assert.All(plan.Rigging.Points, point => Assert.Null(point.SidewaysMost.Value));
        Assert.Null(plan.Rigging.Trusses[0].Sideways.Together.Value);
    }

    private static Plan Of(string venue, (double First, double Second)? at = null, string load = "", string limits = "width: 0.24 m", string said = "stiffness: 900 kN/m", string holds = "") =>
        TwoPointTruss.Of(Stock.Replace("LIMITS", limits, StringComparison.Ordinal), venue.Replace("SAID", said, StringComparison.Ordinal), load, at, first: holds);
}
