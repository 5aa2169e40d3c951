using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>NEC (NFPA 70) 210.19(A)(1), 210.20(A), 215.2(A)(1), 215.3, with the worked examples of pages that explain them.</summary>
public sealed class Nfpa70ContinuousLoad
{
    [Theory]
    [InlineData(50, 125, 187.5)]
    [InlineData(200, 0, 250)]
    [InlineData(0, 300, 300)]
    [InlineData(16, 0, 20)]
    [InlineData(1200, 0, 1500)]
    public void Continuous_load_counts_125_percent(double continuous, double nonContinuous, double required) =>
        Assert.Equal(required, ContinuousLoad.Required(ElectricCurrent.FromAmperes(nonContinuous), ElectricCurrent.FromAmperes(continuous)).Amperes, 9);

    [Theory]
    [InlineData(15, 12)]
    [InlineData(20, 16)]
    [InlineData(30, 24)]
    [InlineData(50, 40)]
    [InlineData(100, 80)]
    [InlineData(400, 320)]
    public void So_a_device_carries_80_percent_continuously(double device, double most) =>
        Assert.Equal(most, ContinuousLoad.MostOn(ElectricCurrent.FromAmperes(device)).Amperes, 9);
}
