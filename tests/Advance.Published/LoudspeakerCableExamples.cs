using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>An amplifier manual's table and example of loss in loudspeaker cable, a forum's check of it, and loads side by side.</summary>
public sealed class LoudspeakerCableExamples
{
    [Theory]
    [InlineData("4.00", new double[] { 8, 8 })]
    [InlineData("2.67", new double[] { 8, 8, 8 })]
    [InlineData("2.00", new double[] { 8, 8, 8, 8 })]
    [InlineData("2.67", new double[] { 4, 8 })]
    public void Loads_side_by_side(string ohms, double[] loads) =>
        Near.AsPrinted(ohms, Impedances.Parallel(new Terms<ElectricResistance>([.. loads.Select(Ohm)])).Ohms);

    [Fact]
    public void One_hundred_and_sixty_feet_of_10_AWG_before_8_ohms()
    {
        // 0.00204 ohm a foot there and back; 24.5 V (75 W into 8 ohm) give 72 W, of which 69 W reach the loudspeaker. The decibels are worked here.
        var cable = Ohm(0.00204 * 160);
        Near.AsPrinted("0.3264", cable.Ohms);
        var amperes = 24.5 / (8 + cable.Ohms);
        Near.AsPrinted("72", 24.5 * amperes);
        Near.AsPrinted("69", amperes * amperes * 8);
        Near.AsPrinted("-0.347", Impedances.CableLoss(Ohm(8), cable).Decibels);
        Near.Within(69.26 / 75, Math.Pow(10, Impedances.CableLoss(Ohm(8), cable).Decibels / 10), 0.001);
    }

    [Theory]
    [InlineData("10", 0.00204)]
    [InlineData("12", 0.00324)]
    [InlineData("14", 0.00515)]
    [InlineData("16", 0.00819)]
    [InlineData("18", 0.01302)]
    public void Its_loop_table_is_that_of_the_code_at_a_cooler_temperature(string gauge, double ohmsPerFoot)
    {
        var loop = Conductors.Loop(
            Conductors.From75(Conductors.StrandedAt75(gauge)!.Value, Temperature.FromDegreesCelsius(20)), Length.FromFeet(1));
        Near.WithinPercent(ohmsPerFoot, loop.Ohms, 1.5);
    }

    [Theory]
    [InlineData(8, 0.01302 * 40, "-0.548")]
    [InlineData(16, 0.0192, "-0.0104")]
    public void Loss_in_decibels(double load, double cable, string decibels) =>
        Near.AsPrinted(decibels, Impedances.CableLoss(Ohm(load), Ohm(cable)).Decibels);

    private static ElectricResistance Ohm(double value) => ElectricResistance.FromOhms(value);
}
