using Advance.Handbook;
using UnitsNet;

namespace Advance.Tests.Handbook.Electricity;

/// <summary>Arguments outside their range are a mistake of the caller, also where conductors and protection are concerned.</summary>
public sealed class ProtectionRangeTests
{
    [Fact]
    public void A_device_opens_at_some_current()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FaultLoop.Permitted(ElectricPotential.FromVolts(230), ElectricCurrent.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Fuses.Operating(ElectricResistance.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => EarthElectrodes.Most(ElectricCurrent.Zero));
    }

    [Fact]
    public void A_loop_has_some_impedance() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ProspectiveCurrents.OneLine(ElectricPotential.FromVolts(230), ElectricResistance.Zero));

    [Theory]
    [InlineData(-1, 141)]
    [InlineData(1, 0)]
    public void A_conductor_takes_some_energy(double letThrough, double k) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Adiabatic.LeastSection(letThrough, k));

    [Fact]
    public void There_is_at_least_one_of_what_is_counted()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Cords.Carries("12", 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => PortableCables.Carries("4/0", TemperatureClass.Ninety, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MoreThanThree.Factor(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Grouping.OneLayer(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Drums.Cylindrical(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ProtectiveConductors.LeastSection(0));
    }

    [Fact]
    public void A_generator_has_a_voltage_and_a_rating()
    {
        var rated = ElectricApparentPower.FromKilovoltamperes(60);
        Assert.Throws<ArgumentOutOfRangeException>(() => Generators.ThreePhaseCurrent(rated, ElectricPotential.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Generators.SinglePhaseCurrent(rated, ElectricPotential.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Generators.Step(rated, ElectricApparentPower.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Generators.Sustained(ElectricCurrent.FromAmperes(87), -1));
    }
}
