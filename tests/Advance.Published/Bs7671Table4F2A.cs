using Advance.Handbook;

namespace Advance.Published;

/// <summary>BS 7671, appendix 4, Table 4F2A: 90 °C thermosetting flexible cable in air of 30 °C, as a page that copies the table prints it.</summary>
public sealed class Bs7671Table4F2A
{
    [Theory]
    [InlineData(4, 42.0, 37.0, null)]
    [InlineData(6, 55.0, 49.0, null)]
    [InlineData(10, 76.0, 66.0, null)]
    [InlineData(16, 103.0, 89.0, null)]
    [InlineData(25, 136.0, 119.0, null)]
    [InlineData(35, null, 146.0, 200.0)]
    [InlineData(50, null, 177.0, 250.0)]
    [InlineData(70, null, 225.0, 310.0)]
    [InlineData(95, null, 273.0, 369.0)]
    [InlineData(120, null, 316.0, 432.0)]
    [InlineData(150, null, 363.0, 497.0)]
    [InlineData(185, null, 414.0, 567.0)]
    [InlineData(240, null, 487.0, 673.0)]
    public void Carries(double size, double? onePhase, double? threePhase, double? singles)
    {
        Assert.Equal(onePhase, FlexibleCables.OnePhase(size, TemperatureClass.Ninety)?.Amperes);
        Assert.Equal(threePhase, FlexibleCables.ThreePhase(size, TemperatureClass.Ninety)?.Amperes);
        Assert.Equal(singles, FlexibleCables.TwoSingles(size, TemperatureClass.Ninety)?.Amperes);
        Assert.Equal(Bs7671.Table4F2A, FlexibleCables.CapacityTable(size, TemperatureClass.Ninety));
    }

    [Fact]
    public void Thirty_five_square_stands_behind_125_A_only_of_90_degrees()
    {
        Assert.True(FlexibleCables.ThreePhase(35)!.Value.Amperes < 125);
        Assert.True(FlexibleCables.ThreePhase(35, TemperatureClass.Ninety)!.Value.Amperes > 125);
    }

    /// <summary>Heat goes with the square of the current: 60 K above the air instead of 30 K let √2 times as much through.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(16)]
    [InlineData(35)]
    [InlineData(95)]
    [InlineData(240)]
    public void Carries_about_root_two_times_the_60_degree_cable(double size) => Near.WithinPercent(
        Math.Sqrt(2), FlexibleCables.ThreePhase(size, TemperatureClass.Ninety)!.Value.Amperes / FlexibleCables.ThreePhase(size)!.Value.Amperes, 2);

    [Theory]
    [InlineData(2.5)]
    [InlineData(3)]
    public void Small_or_odd_sizes_are_unknown(double size) => Assert.Null(FlexibleCables.OnePhase(size, TemperatureClass.Ninety));

    [Fact]
    public void A_class_between_counts_as_the_lower() =>
        Assert.Equal(FlexibleCables.ThreePhase(16), FlexibleCables.ThreePhase(16, TemperatureClass.SeventyFive));
}
