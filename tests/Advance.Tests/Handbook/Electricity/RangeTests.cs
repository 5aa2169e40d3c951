using Advance.Handbook;
using UnitsNet;

namespace Advance.Tests.Handbook.Electricity;

/// <summary>Arguments outside their range are a mistake of the caller; a size that no table has is unknown.</summary>
public sealed class RangeTests
{
    [Theory]
    [InlineData(0, 0.9)]
    [InlineData(-230, 0.9)]
    [InlineData(230, 0)]
    [InlineData(230, 1.1)]
    public void Current_needs_a_voltage_and_a_power_factor(double volts, double powerFactor)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Currents.SinglePhase(Power.FromWatts(1), ElectricPotential.FromVolts(volts), powerFactor));
        Assert.Throws<ArgumentOutOfRangeException>(() => Currents.ThreePhase(Power.FromWatts(1), ElectricPotential.FromVolts(volts), powerFactor));
    }

    [Fact]
    public void A_share_of_no_voltage_is_no_share() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => VoltageDrop.Share(ElectricPotential.FromVolts(1), ElectricPotential.Zero));

    [Fact]
    public void An_amplifier_is_not_better_than_perfect() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AmplifierDraw.FromMains(Power.Zero, Power.FromWatts(1), 0.125, 1.2));

    [Fact]
    public void A_spectrum_starts_at_the_second_order_and_has_no_negative_shares()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Spectrum.Sine.With(1, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Spectrum.Third(-0.1));
    }

    [Fact]
    public void Sizes_between_the_rows_are_unknown()
    {
        Assert.Null(FlexibleCables.OnePhase(3));
        Assert.Null(FlexibleCables.DropThreePhase(3));
        Assert.Null(Conductors.Class5(3));
        Assert.Null(Conductors.StrandedAt75("13"));
    }
}
