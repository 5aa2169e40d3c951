using Advance.Handbook;
using CsCheck;
using UnitsNet;

namespace Advance.Tests.Handbook.Electricity;

/// <summary>What must hold for any loads on any legs: from Kirchhoff's laws.</summary>
public sealed class PhasorSumTests
{
    private static readonly Gen<double> Amperes = Gen.Double[0, 200];
    private static readonly Gen<double> Degrees = Gen.Double[-80, 80];

    [Fact]
    public void Wye_with_one_angle_is_the_formula_by_hand() =>
        Gen.Select(Amperes, Amperes, Amperes, Degrees).Sample((a, b, c, lag) =>
        {
            var sum = Wye((a, lag), (b, lag), (c, lag));
            Close(Neutrals.OfWye(A(a), A(b), A(c)).Amperes, sum.Neutral.Amperes);
        });

    [Fact]
    public void Split_phase_is_the_difference() =>
        Gen.Select(Amperes, Amperes).Sample((a, b) =>
        {
            var sum = PhasorSum.On(LegAngles.SplitPhase).LineToNeutral(0, A(a), Angle.Zero).LineToNeutral(1, A(b), Angle.Zero);
            Close(Math.Abs(a - b), sum.Neutral.Amperes);
            Close(Neutrals.OfSplitPhase(A(a), A(b)).Amperes, sum.Neutral.Amperes);
        });

    [Fact]
    public void A_load_between_legs_puts_nothing_on_the_neutral_and_its_whole_on_both_legs() =>
        Gen.Select(Amperes, Degrees).Sample((amperes, lag) =>
        {
            var sum = PhasorSum.On(LegAngles.ThreePhase).LineToLine(0, 1, A(amperes), Angle.FromDegrees(lag));
            Close(0, sum.Neutral.Amperes);
            Close(amperes, sum.Leg(0).Amperes);
            Close(amperes, sum.Leg(1).Amperes);
            Close(0, sum.Leg(2).Amperes);
        });

    [Fact]
    public void A_three_wire_load_draws_its_line_current_on_every_leg_and_keeps_its_third_harmonic() =>
        Gen.Select(Amperes, Degrees).Sample((amperes, lag) =>
        {
            var sum = PhasorSum.On(LegAngles.ThreePhase).ThreeWire(A(amperes), Angle.FromDegrees(lag));
            Assert.All(Enumerable.Range(0, 3), leg => Close(amperes, sum.Leg(leg).Amperes));
            Close(0, sum.Neutral.Amperes);
            var bent = PhasorSum.On(LegAngles.ThreePhase).ThreeWire(A(amperes), Angle.FromDegrees(lag), Spectrum.Third(0.5));
            Close(0, bent.LegOf(0, 3));
        });

    [Fact]
    public void Third_harmonics_meet_in_the_neutral_of_a_wye_and_cancel_in_that_of_a_split_phase()
    {
        var third = Spectrum.Third(0.5);
        Close(3 * 10 * 0.5 / Math.Sqrt(1.25), PhasorSum.On(LegAngles.ThreePhase).OnEveryLeg(A(10), Angle.Zero, third).NeutralOf(3));
        Close(2 * 10 * 0.5 / Math.Sqrt(1.25), PhasorSum.On(LegAngles.TwoOfWye).OnEveryLeg(A(10), Angle.Zero, third).NeutralOf(3));
        Close(0, PhasorSum.On(LegAngles.SplitPhase).OnEveryLeg(A(10), Angle.Zero, third).NeutralOf(3));
    }

    [Fact]
    public void An_unknown_angle_bounds_every_known_one() =>
        Gen.Select(Amperes, Amperes, Amperes, Degrees, Degrees).Sample((a, b, c, lagA, lagB) =>
        {
            var known = Wye((a, lagA), (b, lagB), (c, 0));
            var open = Wye((a, null), (b, null), (c, 0));
            Assert.True(open.IsBound);
            Assert.False(known.IsBound);
            Assert.True(open.Neutral.Amperes >= known.Neutral.Amperes - 1e-9);
            Assert.All(Enumerable.Range(0, 3), leg => Assert.True(open.Leg(leg).Amperes >= known.Leg(leg).Amperes - 1e-9));
        });

    [Fact]
    public void No_leg_carries_more_than_its_magnitudes() =>
        Gen.Select(Amperes, Amperes, Degrees, Degrees).Sample((a, b, lagA, lagB) =>
        {
            var sum = PhasorSum.On(LegAngles.ThreePhase)
                .LineToNeutral(0, A(a), Angle.FromDegrees(lagA), Spectrum.Third(0.4).With(5, 0.2))
                .LineToLine(0, 2, A(b), Angle.FromDegrees(lagB), Spectrum.Third(0.1));
            Assert.True(sum.Leg(0).Amperes <= sum.LegAtMost(0).Amperes + 1e-9);
        });

    [Fact]
    public void The_worst_neutral_of_balanced_lamps_is_a_whole_leg_with_one_leg_or_two_off()
    {
        var (on, neutral) = Neutrals.Worst(PhasorSum.On(LegAngles.ThreePhase).OnEveryLeg(A(16), Angle.Zero));
        Close(16, neutral.Amperes);
        Assert.Equal([0, 1], on);
    }

    [Fact]
    public void A_load_between_two_legs_stops_when_one_of_them_is_off()
    {
        var sum = PhasorSum.On(LegAngles.ThreePhase).LineToLine(0, 1, A(10), Angle.Zero).LineToNeutral(0, A(5), Angle.Zero);
        Close(5, sum.WithOnly([0, 2]).Leg(0).Amperes);
    }

    [Fact]
    public void Sums_of_one_supply_add_and_those_of_two_do_not()
    {
        var sum = PhasorSum.On(LegAngles.SplitPhase).LineToNeutral(0, A(10), Angle.Zero);
        Close(20, sum.Plus(sum).Leg(0).Amperes);
        Assert.Throws<ArgumentException>(() => sum.Plus(PhasorSum.On(LegAngles.ThreePhase)));
        Assert.Throws<ArgumentOutOfRangeException>(() => sum.LineToNeutral(2, A(1), Angle.Zero));
        Assert.Throws<ArgumentException>(() => sum.LineToLine(1, 1, A(1), Angle.Zero));
    }

    private static PhasorSum Wye(params (double Amperes, double? Lag)[] legs) =>
        legs.Index().Aggregate(
            PhasorSum.On(LegAngles.ThreePhase),
            (sum, leg) => sum.LineToNeutral(leg.Index, A(leg.Item.Amperes), leg.Item.Lag is { } lag ? Angle.FromDegrees(lag) : null));

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static void Close(double expected, double actual) => Assert.True(Math.Abs(expected - actual) < 1e-6, $"{expected} is not {actual}");
}
