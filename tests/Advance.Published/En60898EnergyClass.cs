using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>EN 60898-1, annex ZA, energy limiting class 3: what breakers that limit the current let through, A²s. From memory.</summary>
public sealed class En60898EnergyClass
{
    [Theory]
    [InlineData(BreakerType.B, 16, 3000, 15000)]
    [InlineData(BreakerType.C, 16, 3000, 18000)]
    [InlineData(BreakerType.B, 16, 6000, 35000)]
    [InlineData(BreakerType.C, 16, 6000, 42000)]
    [InlineData(BreakerType.B, 32, 6000, 45000)]
    [InlineData(BreakerType.C, 32, 6000, 55000)]
    [InlineData(BreakerType.B, 32, 10000, 90000)]
    [InlineData(BreakerType.C, 20, 10000, 110000)]
    public void As_tabulated(BreakerType type, double rated, double fault, double energy) => Assert.Equal(energy, Most(type, rated, fault));

    // A fault between two rows counts as the larger; what the table has not is unknown, and not little.
    [Theory]
    [InlineData(BreakerType.C, 16, 3001, 30000.0)]
    [InlineData(BreakerType.C, 6, 200, 18000.0)]
    [InlineData(BreakerType.D, 16, 3000, null)]
    [InlineData(BreakerType.C, 40, 3000, null)]
    [InlineData(BreakerType.C, 16, 10001, null)]
    public void Between_and_beyond(BreakerType type, double rated, double fault, double? energy) => Assert.Equal(energy, Most(type, rated, fault));

    private static double? Most(BreakerType type, double rated, double fault) => BreakerEnergy.Most(type, ElectricCurrent.FromAmperes(rated), ElectricCurrent.FromAmperes(fault));
}
