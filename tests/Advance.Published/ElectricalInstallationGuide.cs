using Advance.Domain.Facts;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>A maker's Electrical Installation Guide, voltage drop, example 2, as in its editions of 2008 and 2018, which tabulate other values.</summary>
public sealed class ElectricalInstallationGuide
{
    [Theory]
    [InlineData(0.59, 19, "4.4", "7.6", 10.1, "4.4")]
    [InlineData(0.55, 18, "4.1", "7.2", 9.6, "4.2")]
    public void Example_2(double feeder, double final, string feederVolts, string finalVolts, double total, string percent)
    {
        var between = VoltageDrop.Tabulated(Per(feeder), ElectricCurrent.FromAmperes(150), Length.FromMeters(50));
        Near.AsPrinted(feederVolts, between.Volts);
        var last = VoltageDrop.Tabulated(Per(final), ElectricCurrent.FromAmperes(20), Length.FromMeters(20));
        Near.AsPrinted(finalVolts, last.Volts);
        var sum = (between / Math.Sqrt(3)) + last;

        // The guide adds rounded steps: 2.54 V and 7.6 V make its 10.1 V.
        Near.Within(total, sum.Volts, 0.06);
        Near.AsPrinted(percent, VoltageDrop.Share(sum, ElectricPotential.FromVolts(230)).Percent);
    }

    [Fact]
    public void Volts_between_lines_do_not_add_to_volts_to_neutral()
    {
        var between = VoltageDrop.Tabulated(Per(0.59), ElectricCurrent.FromAmperes(150), Length.FromMeters(50));
        var last = VoltageDrop.Tabulated(Per(19), ElectricCurrent.FromAmperes(20), Length.FromMeters(20));
        Assert.True(VoltageDrop.Share(between + last, ElectricPotential.FromVolts(230)).Percent > 5);
    }

    // The guide tabulates volts per ampere and kilometre: the number is that of millivolts per ampere and metre.
    private static ResistancePerLength Per(double voltsPerAmpereKilometre) => ResistancePerLength.FromMillivoltsPerAmpereMetre(voltsPerAmpereKilometre);
}
