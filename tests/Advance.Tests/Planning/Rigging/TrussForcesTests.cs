using Advance.Planning;

namespace Advance.Tests.Planning.Rigging;

/// <summary>Shear of a truss on two picks against the sum by hand: statics, no source.</summary>
public sealed class TrussForcesTests
{
    private const double Gravity = 9.80665;

    private const string Stock = """
        kinds:
          truss-3:
            name: Truss 3 m
            owned: 12
            weight: 18 kg weighed
            size: 3.00 x 0.30 x 0.30 m
            truss: {length: 3 m, bending-stiffness: 1700 kNm2, moment: 18 kNm, shear: 11 kN, for-used: yes}
          hoist: {name: Hoist, owned: 8, weight: 45 kg weighed, hoist: {lifts: 500 kg, holds: 500 kg}}
        """;

    [Theory]
    [InlineData(3)]
    [InlineData(1)]
    [InlineData(8)]
    [InlineData(9)]
    public void Shear_is_what_pulls_and_weighs_on_one_side_of_the_place(double along)
    {
        var truss = Of(along).Rigging.Trusses[0];
        var (own, load) = (truss.Loads[0].Weight.Value!.Value.Kilograms, truss.Loads[^1].Weight.Value!.Value.Kilograms);
        Assert.Equal(2, truss.Loads.Count);

        // Picks at 1 m and 8 m of 9 m: beside each, on both sides, and beside the load.
        var right = ((own * 3.5) + (load * (along - 1))) / 7;
        var (metre, left) = (own / 9, own + load - right);
        double[] beside = [.. new[] { 0.999999, 1.000001, along - 0.000001, along + 0.000001, 7.999999, 8.000001 }.Where(at => at is > 0 and < 9)];
        double Shear(double at) => Math.Abs((at > 1 ? left : 0) + (at > 8 ? right : 0) - (metre * at) - (at > along ? load : 0));
        Assert.Equal(1.25 * Gravity * beside.Max(Shear), truss.Shear.Worst.Value!.Value.Newtons, 0.001);
        Assert.Equal(1.25 * Math.Abs(truss.Study!.Moving.Shear!.Value), truss.Shear.Worst.Value!.Value.Newtons, 1e-6);
    }

    [Fact]
    public void Chains_under_their_points_but_for_the_last_bit_of_a_sum_are_plumb()
    {
        // In floating point 0.28 + (1 - 4.5) is not -3.22.
        var plan = Of(3, TwoPointTruss.Hall.Replace("SR 3.5 m", "SR 3.22 m", StringComparison.Ordinal).Replace("SL 3.5 m", "SL 3.78 m", StringComparison.Ordinal), "SL 0.28 m");

        Assert.All(plan.Rigging.Picks, pick => Assert.Equal(0, pick.Lean!.Lean.Value!.Value.Degrees));
        Assert.DoesNotContain(plan.Figures, figure => figure.Address.Text.EndsWith("/sideways-limit", StringComparison.Ordinal));
    }

    private static Plan Of(double along, string venue = TwoPointTruss.Hall, string middle = "SL 0 m") =>
        TwoPointTruss.Of(Stock, venue, FormattableString.Invariant($"{{truss: T1, what: weight, weight: 100 kg, along: {along} m}}"), middle: middle);
}
