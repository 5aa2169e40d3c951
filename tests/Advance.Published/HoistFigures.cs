using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>Chain hoists in general: power worked out from m g v; mass of chain from memory.</summary>
public sealed class HoistFigures
{
    [Theory]
    [InlineData(250, "164", "0.20")]
    [InlineData(500, "327", "0.41")]
    [InlineData(1000, "654", "0.82")]
    public void Power_at_4_metres_a_minute(double kilograms, string mechanical, string electrical)
    {
        // Printed with gravity at 9.81 and rounded up at the half: one watt.
        var speed = Speed.FromMetersPerMinutes(4);
        Near.Within(double.Parse(mechanical), (double)ChainHoists.Lifting(Mass.FromKilograms(kilograms), speed, 1).Watts, 1.0);
        Near.AsPrinted(electrical, (double)ChainHoists.Lifting(Mass.FromKilograms(kilograms), speed, 0.8).Kilowatts);
    }

    [Theory]
    [InlineData(4, "0.35")]
    [InlineData(5, "0.55")]
    [InlineData(6.3, "0.87")]
    [InlineData(7.1, "1.10")]
    [InlineData(8, "1.40")]
    [InlineData(10, "2.19")]
    public void Mass_of_chain_from_memory(double millimetres, string perMetre) =>
        Near.AsPrinted(perMetre, ChainHoists.ChainMass(Length.FromMillimeters(millimetres)).KilogramsPerMeter);

    [Fact]
    public void Chain_of_24_metres_lift_weighs_some_26_kilograms_from_memory() =>
        Near.Within(26, 24 * ChainHoists.ChainMass(Length.FromMillimeters(7.1)).KilogramsPerMeter, 0.6);
}
