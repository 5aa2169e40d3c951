using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>
/// Neutral of an unbalanced wye from pages that print worked answers; and pages whose answers are wrong, which must not come out.
/// </summary>
public sealed class NeutralCalculators
{
    [Theory]
    [InlineData(10, 15, 20, "8.66")]
    [InlineData(10, 10, 5, "5.0")]
    [InlineData(50, 50, 50, "0")]
    [InlineData(30, 0, 0, "30.0")]
    public void Published_answers(double a, double b, double c, string neutral) => Both(a, b, c, value => Near.AsPrinted(neutral, value));

    [Theory]
    [InlineData(50, 50, 30, 20)]
    [InlineData(20, 20, 0, 20)]
    public void Published_inputs_with_the_answer_worked_out_here(double a, double b, double c, double neutral) =>
        Both(a, b, c, value => Near.Within(neutral, value, 1e-9));

    [Theory]
    [InlineData(10, 8, 6, "3.464", 15.1)]
    [InlineData(50, 70, 60, "17.32", 34.6)]
    public void A_slip_of_sign_and_a_doubled_answer_do_not_come_out(double a, double b, double c, string right, double wrong) =>
        Both(a, b, c, value =>
        {
            Near.AsPrinted(right, value);
            Assert.True(Math.Abs(value - wrong) > 1);
        });

    [Fact]
    public void Balanced_legs_leave_nothing_and_not_root_three_times_the_current() => Both(50, 50, 50, value => Assert.True(value < 1e-6));

    [Fact]
    public void With_unequal_power_factors_only_phasors_are_right()
    {
        // 400 V: 10 kW at unity, 15 kW at 0.8 lagging, 8 kW at 0.9 leading, each from a line to neutral. Phase currents are published;
        // the neutral is worked out here. The formula of magnitudes gives 40.5 A.
        var volts = ElectricPotential.FromVolts(400 / Math.Sqrt(3));
        var a = Currents.SinglePhase(Power.FromKilowatts(10), volts, 1);
        var b = Currents.SinglePhase(Power.FromKilowatts(15), volts, 0.8);
        var c = Currents.SinglePhase(Power.FromKilowatts(8), volts, 0.9);
        Near.AsPrinted("43.3", a.Amperes);
        Near.AsPrinted("81.2", b.Amperes);
        Near.AsPrinted("38.5", c.Amperes);
        var sum = PhasorSum.On(LegAngles.ThreePhase)
            .LineToNeutral(0, a, Angle.Zero)
            .LineToNeutral(1, b, Angle.FromRadians(Math.Acos(0.8)))
            .LineToNeutral(2, c, Angle.FromRadians(-Math.Acos(0.9)));
        Near.AsPrinted("64.0", sum.Neutral.Amperes);
        Near.AsPrinted("40.5", Neutrals.OfWye(a, b, c).Amperes);
    }

    private static void Both(double a, double b, double c, Action<double> check)
    {
        check(Neutrals.OfWye(ElectricCurrent.FromAmperes(a), ElectricCurrent.FromAmperes(b), ElectricCurrent.FromAmperes(c)).Amperes);
        var sum = PhasorSum.On(LegAngles.ThreePhase)
            .LineToNeutral(0, ElectricCurrent.FromAmperes(a), Angle.Zero)
            .LineToNeutral(1, ElectricCurrent.FromAmperes(b), Angle.Zero)
            .LineToNeutral(2, ElectricCurrent.FromAmperes(c), Angle.Zero);
        check(sum.Neutral.Amperes);
    }
}
