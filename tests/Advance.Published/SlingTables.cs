using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>
/// EN 1492-2 round slings (a maker's manual), EN 818-4 chain slings of grade 8 (a catalogue, p. 148), forged shackles and eye bolts as makers print them;
/// ASME B30.9 choke angles as the design's safety page gives them; side loads of shackles (ASME B30.26) from memory.
/// </summary>
public sealed class SlingTables
{
    [Theory]
    [InlineData("violet", 1, 0.8, 2, 1.4, 1.0, 2.1, 1.5)]
    [InlineData("green", 2, 1.6, 4, 2.8, 2.0, 4.2, 3.0)]
    [InlineData("yellow", 3, 2.4, 6, 4.2, 3.0, 6.3, 4.5)]
    [InlineData("grey", 4, 3.2, 8, 5.6, 4.0, 8.4, 6.0)]
    [InlineData("red", 5, 4.0, 10, 7.0, 5.0, 10.5, 7.5)]
    [InlineData("brown", 6, 4.8, 12, 8.4, 6.0, 12.6, 9.0)]
    [InlineData("blue", 8, 6.4, 16, 11.2, 8.0, 16.8, 12.0)]
    [InlineData("orange", 10, 8.0, 20, 14.0, 10.0, 21.0, 15.0)]
    public void Round_slings_of_EN_1492_2(string colour, double straight, double choked, double parallel, double to45, double to60, double legs45, double legs60)
    {
        var one = RoundSlings.Straight(colour)!.Value.Tonnes;
        double[] printed = [straight, choked, parallel, to45, to60, legs45, legs60];
        double[] worked =
        [
            one * Hitches.Straight, one * Hitches.Choke, one * Hitches.Basket(0)!.Value, one * Hitches.Basket(45)!.Value, one * Hitches.Basket(60)!.Value,
            one * Hitches.ThreeOrFourLegs(45)!.Value, one * Hitches.ThreeOrFourLegs(60)!.Value,
        ];
        Assert.All(printed.Zip(worked), pair => Near.Within(pair.First, pair.Second, 1e-9));
    }

    [Fact]
    public void Beyond_60_degrees_from_the_vertical_nothing_is_rated()
    {
        Assert.Null(Hitches.Basket(61));
        Assert.Null(Hitches.ThreeOrFourLegs(61));
        Assert.Null(Hitches.BasketFromHorizontal(29));
        Assert.Null(ChainSlings.Rating(8, 2, 61));
        Assert.Null(RoundSlings.Straight("purple"));
    }

    [Theory]
    [InlineData(180, 0.8)]
    [InlineData(120, 0.8)]
    [InlineData(119, 0.8 * 0.87)]
    [InlineData(89, 0.8 * 0.74)]
    [InlineData(59, 0.8 * 0.62)]
    [InlineData(29, 0.8 * 0.49)]
    public void Choke_angles_of_ASME_B30_9(double angle, double factor) => Near.Within(factor, Hitches.ChokeAt(angle), 1e-9);

    [Theory]
    [InlineData(6, 1.12, 1.60, 1.12, 2.36, 1.70, 1.80)]
    [InlineData(7, 1.50, 2.12, 1.50, 3.15, 2.24, 2.50)]
    [InlineData(8, 2.00, 2.80, 2.00, 4.25, 3.00, 3.15)]
    [InlineData(10, 3.15, 4.25, 3.15, 6.70, 4.75, 5.00)]
    [InlineData(13, 5.30, 7.50, 5.30, 11.20, 8.00, 8.50)]
    [InlineData(16, 8.00, 11.20, 8.00, 17.00, 11.80, 12.50)]
    public void Chain_slings_of_EN_818_4(int millimetres, double one, double two45, double two60, double four45, double four60, double endless)
    {
        Mass?[] worked =
        [
            ChainSlings.Rating(millimetres, 1, 0), ChainSlings.Rating(millimetres, 2, 45), ChainSlings.Rating(millimetres, 2, 60),
            ChainSlings.Rating(millimetres, 3, 30), ChainSlings.Rating(millimetres, 4, 50), ChainSlings.Endless(millimetres),
        ];
        Assert.All(new[] { one, two45, two60, four45, four60, endless }.Zip(worked), pair => Near.Within(pair.First, pair.Second!.Value.Tonnes, 1e-9));
    }

    [Theory]
    [InlineData("3/16", 0.3333, null)]
    [InlineData("1/4", 0.5, null)]
    [InlineData("5/16", 0.75, null)]
    [InlineData("3/8", 1.0, 2.0)]
    [InlineData("7/16", 1.5, 2.6)]
    [InlineData("1/2", 2.0, 3.3)]
    [InlineData("5/8", 3.25, 5.0)]
    [InlineData("3/4", 4.75, 7.0)]
    [InlineData("7/8", 6.5, 9.5)]
    [InlineData("1", 8.5, 12.5)]
    [InlineData("1-1/8", 9.5, 15.0)]
    [InlineData("1-1/4", 12.0, 18.0)]
    public void Shackles_in_tons_as_printed(string inches, double carbon, double? alloy)
    {
        Near.Within(carbon, Shackles.Rating(inches, isAlloy: false)!.Value, 1e-4);
        Assert.Equal(alloy, Shackles.Rating(inches, isAlloy: true));
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(45, 0.7)]
    [InlineData(90, 0.5)]
    public void Side_load_of_shackles_from_memory(double degrees, double share) => Assert.Equal(share, Shackles.SideLoad(degrees));

    [Theory]
    [InlineData(1550, 15, "1240")]
    [InlineData(1550, 90, "388")]
    [InlineData(600, 15, "480")]
    public void Eye_bolts_pulled_at_an_angle(double pounds, double degrees, string printed) => Near.AsPrinted(printed, pounds * EyeBolts.Share(degrees));

    [Theory]
    [InlineData(5, 1)]
    [InlineData(30, 0.65)]
    [InlineData(31, 0.3)]
    [InlineData(45, 0.3)]
    public void Eye_bolts_between_the_printed_angles_take_the_lesser_share(double degrees, double share) => Assert.Equal(share, EyeBolts.Share(degrees));
}
