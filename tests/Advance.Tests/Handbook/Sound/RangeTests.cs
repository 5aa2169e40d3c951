using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Tests.Handbook.Sound;

/// <summary>Arguments outside their range are a mistake of the caller.</summary>
public sealed class RangeTests
{
    [Fact]
    public void Sound_needs_air_and_a_spacing()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SoundSpeed.In(Temperature.FromDegreesCelsius(-300)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Delays.Over(Length.FromMeters(1), Speed.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => QuarterWave.FrequencyOf(Length.Zero, Speed.FromMetersPerSecond(343)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SubDelays.EndFire(-1, Length.FromMeters(1), Speed.FromMetersPerSecond(343)));
    }

    [Fact]
    public void An_amplifier_needs_a_load()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Impedances.Parallel(new Terms<ElectricResistance>([])));
        Assert.Throws<ArgumentOutOfRangeException>(() => Impedances.Parallel(new Terms<ElectricResistance>([ElectricResistance.Zero])));
        Assert.Throws<ArgumentOutOfRangeException>(() => Impedances.CableLoss(ElectricResistance.Zero, ElectricResistance.FromOhms(1)));
    }
}
