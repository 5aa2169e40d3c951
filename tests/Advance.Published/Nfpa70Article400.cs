using Advance.Handbook;

namespace Advance.Published;

/// <summary>
/// NEC (NFPA 70), article 400, clauses as in 2020: Tables 400.5(A)(1) (code pages), 400.5(A)(2) (a film-lighting handbook that cites it, and an open
/// transcription), 400.5(A)(3), all at 30 °C, and examples worked with them.
/// </summary>
public sealed class Nfpa70Article400
{
    [Theory]
    [InlineData("18", 7, 10)]
    [InlineData("16", 10, 13)]
    [InlineData("14", 15, 18)]
    [InlineData("12", 20, 25)]
    [InlineData("10", 25, 30)]
    [InlineData("8", 35, 40)]
    [InlineData("6", 45, 55)]
    [InlineData("4", 60, 70)]
    [InlineData("2", 80, 95)]
    public void Table_400_5_A_1_columns_A_and_B(string gauge, double three, double two)
    {
        Assert.Equal(three, Cords.Carries(gauge, 3)!.Value.Amperes);
        Assert.Equal(two, Cords.Carries(gauge, 2)!.Value.Amperes);
        Assert.Equal(three, Cords.Carries(gauge, 6)!.Value.Amperes);
    }

    [Theory]
    [InlineData("17")]
    [InlineData("1")]
    [InlineData("2/0")]
    [InlineData("")]
    public void Cords_of_other_sizes_are_unknown(string gauge) => Assert.Null(Cords.Carries(gauge, 3));

    // Gauge; 90 °C of one, two, three; 75 °C; 60 °C; 0 for blank.
    public static TheoryData<string, int[], int[], int[]> Portable => new()
    {
        { "8", [80, 74, 65], [70, 65, 57], [0, 0, 0] },
        { "6", [105, 99, 87], [95, 88, 77], [0, 0, 0] },
        { "4", [140, 130, 114], [125, 115, 101], [105, 96, 84] },
        { "2", [190, 174, 152], [170, 152, 133], [140, 128, 112] },
        { "1", [220, 202, 177], [0, 0, 0], [0, 0, 0] },
        { "1/0", [260, 234, 205], [230, 207, 181], [195, 173, 151] },
        { "2/0", [300, 271, 237], [265, 238, 208], [225, 199, 174] },
        { "3/0", [350, 313, 274], [310, 275, 241], [260, 230, 201] },
        { "4/0", [405, 361, 316], [360, 317, 277], [300, 265, 232] },
    };

    [Theory]
    [MemberData(nameof(Portable))]
    public void Table_400_5_A_2(string gauge, int[] ninety, int[] seventyFive, int[] sixty)
    {
        for (var loaded = 1; loaded <= 3; loaded++)
        {
            Same(ninety[loaded - 1], gauge, TemperatureClass.Ninety, loaded);
            Same(seventyFive[loaded - 1], gauge, TemperatureClass.SeventyFive, loaded);
            Same(sixty[loaded - 1], gauge, TemperatureClass.Sixty, loaded);
        }

        Same(ninety[2], gauge, TemperatureClass.Ninety, 5);
    }

    /// <summary>Another page on 4/0 entertainment cable: 405 A.</summary>
    [Fact]
    public void A_single_of_4_0_in_free_air() => Assert.Equal(405, PortableCables.Carries("4/0", TemperatureClass.Ninety, 1)!.Value.Amperes);

    [Theory]
    [InlineData("18")]
    [InlineData("3")]
    public void Portable_cables_of_other_sizes_are_unknown(string gauge) => Assert.Null(PortableCables.Carries(gauge, TemperatureClass.Ninety, 1));

    [Theory]
    [InlineData(1, 1)]
    [InlineData(3, 1)]
    [InlineData(4, 0.80)]
    [InlineData(6, 0.80)]
    [InlineData(7, 0.70)]
    [InlineData(9, 0.70)]
    [InlineData(10, 0.50)]
    [InlineData(20, 0.50)]
    [InlineData(21, 0.45)]
    [InlineData(30, 0.45)]
    [InlineData(31, 0.40)]
    [InlineData(40, 0.40)]
    [InlineData(41, 0.35)]
    public void Table_400_5_A_3(int loaded, double factor) => Assert.Equal(factor, MoreThanThree.Factor(loaded));

    /// <summary>An open calculator's test: 14 AWG with seven loaded conductors, 15 · 0.70.</summary>
    [Fact]
    public void Seven_loaded_conductors_of_14_AWG_carry_10_5_A() => Near.AsPrinted("10.5", Cords.Carries("14", 7)!.Value.Amperes * MoreThanThree.Factor(7));

    private static void Same(int published, string gauge, TemperatureClass temperatureClass, int loaded) =>
        Assert.Equal(published == 0 ? null : published, PortableCables.Carries(gauge, temperatureClass, loaded)?.Amperes);
}
