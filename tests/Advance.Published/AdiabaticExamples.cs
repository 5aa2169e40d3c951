using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>
/// BS 7671, Table 43.1, and the equation that its values of k come from (IEC 60364-5-54, Annex A; constants and temperatures as a page on the cable constant
/// prints them), with the worked examples of an installation book, a calculator page and a forum on 543.1.3, all for k = 115.
/// </summary>
public sealed class AdiabaticExamples
{
    // Copper: J/(K·mm³), ohm·mm, K.
    private const double Heat = 3.45e-3;
    private const double Resistivity = 17.241e-6;
    private const double Beta = 234.5;

    [Theory]
    [InlineData(TemperatureClass.Sixty, 60, 200)]
    [InlineData(TemperatureClass.Ninety, 90, 250)]
    public void K_by_its_own_equation(TemperatureClass temperatureClass, double from, double to)
    {
        var k = Math.Sqrt(Heat * (Beta + 20) / Resistivity * Math.Log(1 + ((to - from) / (Beta + from))));
        Near.Within(Adiabatic.K(temperatureClass)!.Value, k, 0.5);
    }

    [Fact]
    public void K_of_75_degrees_is_not_in_the_table() => Assert.Null(Adiabatic.K(TemperatureClass.SeventyFive));

    [Theory]
    [InlineData(200, 0.4, "1.10")]
    [InlineData(90, 0.4, "0.49")]
    [InlineData(3000, 0.4, "16.50")]
    [InlineData(120, 0.4, "0.66")]
    [InlineData(328, 0.4, "1.80")]
    public void Least_section(double amperes, double seconds, string squareMillimetres) => Near.AsPrinted(
        squareMillimetres, Adiabatic.LeastSection(Adiabatic.LetThrough(ElectricCurrent.FromAmperes(amperes), Duration.FromSeconds(seconds)), 115));
}
