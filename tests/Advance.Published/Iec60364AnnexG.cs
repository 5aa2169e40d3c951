using Advance.Domain.Facts;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>IEC 60364-5-52:2009, Annex G: drop with ρ₁ = 0.0225 Ω·mm²/m, and the trap of its three-phase formula.</summary>
public sealed class Iec60364AnnexG
{
    [Fact]
    public void One_phase_32_A_30_m_6_square()
    {
        // A calculator page's example: 7.20 V, 3.13 %, too much for lighting (3 %), not for the rest (5 %).
        var drop = VoltageDrop.TwoWire(ElectricCurrent.FromAmperes(32), Length.FromMeters(30), new ResistancePerLength(0.0225 / 6));
        Near.AsPrinted("7.20", drop.Volts);
        Near.AsPrinted("3.13", VoltageDrop.Share(drop, ElectricPotential.FromVolts(230)).Percent);
    }

    [Theory]
    [InlineData(230, 3, 6.9)]
    [InlineData(230, 5, 11.5)]
    [InlineData(400, 3, 12)]
    [InlineData(400, 5, 20)]
    public void Limits_in_volts(double nominal, double percent, double volts) =>
        Near.Within(percent, VoltageDrop.Share(ElectricPotential.FromVolts(volts), ElectricPotential.FromVolts(nominal)).Percent, 1e-9);

    [Fact]
    public void Its_three_phase_volts_are_to_neutral_so_only_percentages_compare()
    {
        var (current, length, perLength) = (ElectricCurrent.FromAmperes(63), Length.FromMeters(75), ResistancePerLength.FromOhmsPerKilometre(1.43));
        var toNeutral = VoltageDrop.ToNeutral(current, length, perLength);
        var between = VoltageDrop.ThreePhase(current, length, perLength);
        Near.Within(Math.Sqrt(3), between.Volts / toNeutral.Volts, 1e-9);
        var nominal = ElectricPotential.FromVolts(400);
        Near.Within(
            VoltageDrop.Share(between, nominal).Percent,
            VoltageDrop.Share(toNeutral, nominal / Math.Sqrt(3)).Percent,
            1e-9);
    }

    [Fact]
    public void One_leg_alone_of_a_three_phase_cable_drops_twice_the_balanced_percentage()
    {
        var (current, length, perLength) = (ElectricCurrent.FromAmperes(63), Length.FromMeters(75), ResistancePerLength.FromOhmsPerKilometre(1.43));
        var alone = VoltageDrop.Share(VoltageDrop.TwoWire(current, length, perLength), ElectricPotential.FromVolts(400 / Math.Sqrt(3)));
        var balanced = VoltageDrop.Share(VoltageDrop.ThreePhase(current, length, perLength), ElectricPotential.FromVolts(400));
        Near.Within(2 * balanced.Percent, alone.Percent, 1e-9);
    }

    [Fact]
    public void A_leading_current_drops_less_and_may_raise_the_far_end()
    {
        var (r, x) = (ResistancePerLength.FromOhmsPerKilometre(0.1), ResistancePerLength.FromOhmsPerKilometre(0.08));
        Assert.True(VoltageDrop.Effective(r, x, Angle.FromDegrees(-30)).OhmsPerMetre < VoltageDrop.Effective(r, x, Angle.FromDegrees(30)).OhmsPerMetre);
        Assert.True(VoltageDrop.Effective(r, x, Angle.FromDegrees(-60)).OhmsPerMetre < 0);
    }
}
