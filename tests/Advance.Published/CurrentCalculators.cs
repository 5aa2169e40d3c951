using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>Worked examples printed on electricians' calculator pages: power to current, one and three phases.</summary>
public sealed class CurrentCalculators
{
    [Fact]
    public void Single_phase_3_kW_at_230_V_and_point_nine() =>
        Near.AsPrinted("14.49", Currents.SinglePhase(Power.FromWatts(3000), ElectricPotential.FromVolts(230), 0.9).Amperes);

    [Theory]
    [InlineData(1500, 230, 0.85, "4.43")]
    [InlineData(19486, 250, 0.9, "50")]
    [InlineData(70666, 480, 0.85, "100")]
    public void Three_phase(double watts, double volts, double powerFactor, string amperes) =>
        Near.AsPrinted(amperes, Currents.ThreePhase(Power.FromWatts(watts), ElectricPotential.FromVolts(volts), powerFactor).Amperes);

    [Fact]
    public void A_hundred_kilowatts_at_208_V_with_the_power_factor_of_the_line_above_it() =>
        Near.WithinPercent(327, Currents.ThreePhase(Power.FromKilowatts(100), ElectricPotential.FromVolts(208), 0.85).Amperes, 0.5);

    [Theory]
    [InlineData(50, 250, 0.9, "19.486")]
    [InlineData(100, 480, 0.85, "70.7")]
    public void Three_phase_back_to_kilowatts(double amperes, double volts, double powerFactor, string kilowatts)
    {
        var apparent = Currents.ApparentThreePhase(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(amperes));
        Near.AsPrinted(kilowatts, (double)Currents.Real(apparent, powerFactor).Kilowatts);
    }

    [Fact]
    public void Eighteen_kilovoltamperes_at_208_V_are_50_A() =>
        Near.WithinPercent(50, Currents.ThreePhase(Power.FromKilowatts(18), ElectricPotential.FromVolts(208), 1).Amperes, 0.1);

    [Fact]
    public void A_motor_of_4_and_a_half_kilowatts_at_230_V() =>
        // 75 % efficient, so it draws 6 kW, at a power factor of 0.7.
        Near.AsPrinted("37.3", Currents.SinglePhase(Power.FromWatts(4500 / 0.75), ElectricPotential.FromVolts(230), 0.7).Amperes);
}
