using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>
/// BS 7671, appendix 4: Table 4B1 (a page that copies it), Table 4C1 (an electricians' guide to the edition of 2008 that reprints it), and the
/// notes on drums to Table 4F1A.
/// </summary>
public sealed class Bs7671RatingFactors
{
    [Theory]
    [InlineData(TemperatureClass.Sixty, 30, "1.00")]
    [InlineData(TemperatureClass.Sixty, 35, "0.91")]
    [InlineData(TemperatureClass.Sixty, 40, "0.82")]
    [InlineData(TemperatureClass.Sixty, 45, "0.71")]
    [InlineData(TemperatureClass.Sixty, 50, "0.58")]
    [InlineData(TemperatureClass.Sixty, 55, "0.41")]
    [InlineData(TemperatureClass.Ninety, 35, "0.96")]
    [InlineData(TemperatureClass.Ninety, 40, "0.91")]
    [InlineData(TemperatureClass.Ninety, 45, "0.87")]
    [InlineData(TemperatureClass.Ninety, 50, "0.82")]
    [InlineData(TemperatureClass.Ninety, 55, "0.76")]
    [InlineData(TemperatureClass.Ninety, 60, "0.71")]
    [InlineData(TemperatureClass.Ninety, 65, "0.65")]
    [InlineData(TemperatureClass.Ninety, 70, "0.58")]
    [InlineData(TemperatureClass.Ninety, 75, "0.50")]
    [InlineData(TemperatureClass.Ninety, 80, "0.41")]
    [InlineData(TemperatureClass.Ninety, 85, "0.29")]
    public void Table_4B1(TemperatureClass temperatureClass, double air, string factor) =>
        Near.AsPrinted(factor, AmbientTemperature.Factor(temperatureClass, Temperature.FromDegreesCelsius(air))!.Value);

    /// <summary>The table prints 1.04 and 1.02 at 25 °C; we do not count on cool air.</summary>
    [Theory]
    [InlineData(TemperatureClass.Sixty)]
    [InlineData(TemperatureClass.Ninety)]
    public void Cool_air_adds_nothing(TemperatureClass temperatureClass) =>
        Assert.Equal(1, AmbientTemperature.Factor(temperatureClass, Temperature.FromDegreesCelsius(25)));

    [Theory]
    [InlineData(TemperatureClass.Sixty, 56)]
    [InlineData(TemperatureClass.Sixty, 60)]
    [InlineData(TemperatureClass.Sixty, 80)]
    [InlineData(TemperatureClass.Ninety, 86)]
    public void Hotter_air_is_not_in_the_table(TemperatureClass temperatureClass, double air) =>
        Assert.Null(AmbientTemperature.Factor(temperatureClass, Temperature.FromDegreesCelsius(air)));

    [Theory]
    [InlineData(1, 1.00, 1.00)]
    [InlineData(2, 0.80, 0.85)]
    [InlineData(3, 0.70, 0.79)]
    [InlineData(4, 0.65, 0.75)]
    [InlineData(5, 0.60, 0.73)]
    [InlineData(6, 0.57, 0.72)]
    [InlineData(7, 0.54, 0.72)]
    [InlineData(8, 0.52, 0.71)]
    [InlineData(9, 0.50, 0.70)]
    [InlineData(12, 0.45, 0.70)]
    [InlineData(16, 0.41, 0.70)]
    [InlineData(20, 0.38, 0.70)]
    public void Table_4C1(int circuits, double bunched, double oneLayer)
    {
        Assert.Equal(bunched, Grouping.Bunched(circuits));
        Assert.Equal(oneLayer, Grouping.OneLayer(circuits));
    }

    [Theory]
    [InlineData(10, 0.45)]
    [InlineData(13, 0.41)]
    [InlineData(19, 0.38)]
    public void Between_two_rows_the_lower_holds(int circuits, double bunched) => Assert.Equal(bunched, Grouping.Bunched(circuits));

    [Fact]
    public void More_than_twenty_circuits_are_not_in_the_table()
    {
        Assert.Null(Grouping.Bunched(21));
        Assert.Null(Grouping.OneLayer(21));
    }

    [Fact]
    public void There_is_no_group_of_none() => Assert.Throws<ArgumentOutOfRangeException>(() => Grouping.Bunched(0));

    [Fact]
    public void Regulation_523_5_leaves_out_cable_of_30_percent() => Assert.Equal(0.3, Grouping.LightlyLoaded);

    [Fact]
    public void Radial_drums()
    {
        Assert.Equal(0.85, Drums.Radial(isVentilated: true));
        Assert.Equal(0.75, Drums.Radial(isVentilated: false));
    }

    [Theory]
    [InlineData(1, 0.85)]
    [InlineData(2, 0.65)]
    [InlineData(3, 0.45)]
    [InlineData(4, 0.35)]
    [InlineData(5, null)]
    public void Cylindrical_drums(int layers, double? factor) => Assert.Equal(factor, Drums.Cylindrical(layers));

    /// <summary>Worked here: 16 mm² of 60 °C, 63 A, left on two layers of its drum in 40 °C is good for a C32 and not for a C63.</summary>
    [Fact]
    public void Factors_are_multiplied()
    {
        var amperes = FlexibleCables.ThreePhase(16)!.Value.Amperes * Drums.Cylindrical(2)!.Value
            * AmbientTemperature.Factor(TemperatureClass.Sixty, Temperature.FromDegreesCelsius(40))!.Value;
        Near.AsPrinted("33.4", amperes);
    }
}
