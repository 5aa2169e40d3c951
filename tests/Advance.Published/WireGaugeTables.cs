using Advance.Handbook;

namespace Advance.Published;

/// <summary>American wire gauge in mm², as conversion pages print it to four places, and as circular mils of NEC chapter 9, Table 8.</summary>
public sealed class WireGaugeTables
{
    [Theory]
    [InlineData("4/0", "107.2193")]
    [InlineData("3/0", "85.0288")]
    [InlineData("2/0", "67.4309")]
    [InlineData("1/0", "53.4751")]
    [InlineData("1", "42.4077")]
    [InlineData("2", "33.6308")]
    [InlineData("3", "26.6705")]
    [InlineData("4", "21.1506")]
    [InlineData("6", "13.3018")]
    [InlineData("8", "8.3656")]
    [InlineData("10", "5.2612")]
    [InlineData("12", "3.3088")]
    [InlineData("14", "2.0809")]
    [InlineData("16", "1.3087")]
    [InlineData("18", "0.823")]
    public void Section(string gauge, string squareMillimetres) => Near.AsPrinted(squareMillimetres, WireGauge.SquareMillimetres(gauge)!.Value);

    [Theory]
    [MemberData(nameof(Nfpa70Chapter9.Stranded), MemberType = typeof(Nfpa70Chapter9))]
    public void Circular_mils_and_resistance_of_Table_8(string gauge, double circularMils, double ohms)
    {
        // A circular mil is the area of a circle of a thousandth of an inch.
        var mils = WireGauge.SquareMillimetres(gauge)!.Value / (Math.PI / 4 * 0.0254 * 0.0254);
        Near.WithinPercent(circularMils, mils, 0.3);

        // Ohm and mm² of a metre give the trade's K of 12.9 again, 0.02145 ohm·mm²/m at 75 °C.
        Near.WithinPercent(0.02145, ohms / 304.8 * WireGauge.SquareMillimetres(gauge)!.Value, 0.7);
    }

    [Theory]
    [InlineData("20")]
    [InlineData("0")]
    [InlineData("5/0")]
    [InlineData("2.5 mm2")]
    [InlineData("")]
    public void What_is_no_gauge_of_power_cable(string gauge) => Assert.Null(WireGauge.SquareMillimetres(gauge));

    /// <summary>Never thicker than the cable: 10 mm² is 8 AWG of 8.37 mm²; 2.5 mm² only 14 AWG of 2.08 mm² though 12 AWG of 3.31 mm² is as near.</summary>
    [Theory]
    [InlineData(0.75, null)]
    [InlineData(1.5, "16")]
    [InlineData(2.5, "14")]
    [InlineData(4, "12")]
    [InlineData(6, "10")]
    [InlineData(10, "8")]
    [InlineData(16, "6")]
    [InlineData(25, "4")]
    [InlineData(35, "2")]
    [InlineData(70, "2/0")]
    [InlineData(95, "3/0")]
    [InlineData(120, "4/0")]
    [InlineData(240, "4/0")]
    public void Within_a_metric_size(double squareMillimetres, string? gauge) => Assert.Equal(gauge, WireGauge.Within(squareMillimetres));

    [Fact]
    public void A_gauge_lies_within_itself() =>
        Assert.All(WireGauge.Sizes, gauge => Assert.Equal(gauge, WireGauge.Within(WireGauge.SquareMillimetres(gauge)!.Value)));
}
