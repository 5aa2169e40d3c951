using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>
/// NEC (NFPA 70), clauses as in 2020: Table 310.15(B)(1) for air of 30 °C (a state's residential code that reprints it as E3705.2), Table 310.16 (several
/// pages alike), 110.14(C) and 520.53(O)(2).
/// </summary>
public sealed class Nfpa70Article310
{
    // The table has bands of 5 K; the factor is that of the band's warm end.
    [Theory]
    [InlineData(30, "1.00", "1.00", "1.00")]
    [InlineData(35, "0.91", "0.94", "0.96")]
    [InlineData(40, "0.82", "0.88", "0.91")]
    [InlineData(45, "0.71", "0.82", "0.87")]
    [InlineData(50, "0.58", "0.75", "0.82")]
    [InlineData(55, "0.41", "0.67", "0.76")]
    [InlineData(60, null, "0.58", "0.71")]
    [InlineData(65, null, "0.47", "0.65")]
    [InlineData(70, null, "0.33", "0.58")]
    [InlineData(75, null, null, "0.50")]
    [InlineData(80, null, null, "0.41")]
    [InlineData(85, null, null, "0.29")]
    public void Table_310_15_B_1(double air, string? sixty, string? seventyFive, string? ninety)
    {
        Same(sixty, TemperatureClass.Sixty, air);
        Same(seventyFive, TemperatureClass.SeventyFive, air);
        Same(ninety, TemperatureClass.Ninety, air);
    }

    [Theory]
    [InlineData("14", 15, 20)]
    [InlineData("12", 20, 25)]
    [InlineData("10", 30, 35)]
    [InlineData("8", 40, 50)]
    [InlineData("6", 55, 65)]
    [InlineData("4", 70, 85)]
    [InlineData("3", 85, 100)]
    [InlineData("2", 95, 115)]
    [InlineData("1", 110, 130)]
    [InlineData("1/0", 125, 150)]
    [InlineData("2/0", 145, 175)]
    [InlineData("3/0", 165, 200)]
    [InlineData("4/0", 195, 230)]
    public void Table_310_16_at_terminations(string gauge, double sixty, double seventyFive)
    {
        Assert.Equal(sixty, Terminations.Carry(gauge, TemperatureClass.Sixty)!.Value.Amperes);
        Assert.Equal(seventyFive, Terminations.Carry(gauge, TemperatureClass.SeventyFive)!.Value.Amperes);
        Assert.Null(Terminations.Carry(gauge, TemperatureClass.Ninety));
    }

    [Fact]
    public void A_size_that_the_table_has_not_is_unknown() => Assert.Null(Terminations.Carry("18", TemperatureClass.SeventyFive));

    [Fact]
    public void The_neutral_of_400_A_lines_to_dimmers_is_for_520_A() =>
        Assert.Equal(520, SinglePoleSets.NeutralForDimmers(ElectricCurrent.FromAmperes(400)).Amperes, 9);

    private static void Same(string? published, TemperatureClass temperatureClass, double air)
    {
        var factor = AmbientTemperature.Factor(temperatureClass, Temperature.FromDegreesCelsius(air));
        Assert.Equal(published is null, factor is null);
        if (published is not null)
        {
            Near.AsPrinted(published, factor!.Value);
        }
    }
}
