using Advance.Domain.Facts;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>IEC 60228 (BS EN 60228), Table 3, class 5 flexible copper, highest direct-current resistance at 20 °C, ohm per kilometre.</summary>
public sealed class Iec60228Table3
{
    [Theory]
    [InlineData(0.5, 39.0, 40.1)]
    [InlineData(0.75, 26.0, 26.7)]
    [InlineData(1, 19.5, 20.0)]
    [InlineData(1.5, 13.3, 13.7)]
    [InlineData(2.5, 7.98, 8.21)]
    [InlineData(4, 4.95, 5.09)]
    [InlineData(6, 3.30, 3.39)]
    [InlineData(10, 1.91, 1.95)]
    [InlineData(16, 1.21, 1.24)]
    [InlineData(25, 0.780, 0.795)]
    [InlineData(35, 0.554, 0.565)]
    [InlineData(50, 0.386, 0.393)]
    [InlineData(70, 0.272, 0.277)]
    [InlineData(95, 0.206, 0.210)]
    [InlineData(120, 0.161, 0.164)]
    [InlineData(150, 0.129, 0.132)]
    [InlineData(185, 0.106, 0.108)]
    [InlineData(240, 0.0801, 0.0817)]
    [InlineData(300, 0.0641, 0.0654)]
    [InlineData(400, 0.0486, 0.0495)]
    public void Class_5_plain_and_metal_coated(double size, double plain, double tinned)
    {
        Near.Within(plain, Ohms(size, tinned: false), 1e-9);
        Near.Within(tinned, Ohms(size, tinned: true), 1e-9);
    }

    [Theory]
    [InlineData(2.5, 7.41)]
    [InlineData(16, 1.15)]
    [InlineData(50, 0.387)]
    public void Class_2_is_another_table(double size, double class2) => Assert.NotEqual(class2, Ohms(size, tinned: false), 4);

    [Theory]
    [InlineData(60, "1.157")]
    [InlineData(70, "1.197")]
    [InlineData(90, "1.275")]
    public void Multipliers_of_temperature(double celsius, string factor) =>
        Near.AsPrinted(factor, Conductors.From20(new ResistancePerLength(1), Temperature.FromDegreesCelsius(celsius)).OhmsPerMetre);

    [Theory]
    [InlineData(60, 0.862)]
    [InlineData(75, 0.820)]
    [InlineData(90, 0.781)]
    public void The_standards_own_simplified_table_back_to_20_degrees_differs_by_less_than_half_a_percent(double celsius, double factor) =>
        Near.WithinPercent(factor, 1 / Conductors.From20(new ResistancePerLength(1), Temperature.FromDegreesCelsius(celsius)).OhmsPerMetre, 0.5);

    [Theory]
    [InlineData(1.5, 5, "0.07")]
    [InlineData(1.5, 20, "0.27")]
    [InlineData(1.5, 45, "0.60")]
    [InlineData(2.5, 20, "0.16")]
    public void One_core_of_an_extension_lead_as_measured_tables_print_it(double size, double metres, string ohms) =>
        Near.AsPrinted(ohms, Conductors.OneWay(Conductors.Class5(size, tinned: false)!.Value, Length.FromMeters(metres)).Ohms);

    [Fact]
    public void A_size_that_the_table_has_not_is_unknown() => Assert.Null(Conductors.Class5(3));

    private static double Ohms(double size, bool tinned) => Conductors.Class5(size, tinned)!.Value.OhmsPerMetre * 1000;
}
