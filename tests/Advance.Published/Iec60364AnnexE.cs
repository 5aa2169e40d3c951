using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>
/// IEC 60364-5-52:2009, Annex E: Table E.52.1 with its limits, the worked example of a 39 A load, and what pages on triplen harmonics print.
/// </summary>
public sealed class Iec60364AnnexE
{
    [Theory]
    [InlineData(0, 1, false)]
    [InlineData(15, 1, false)]
    [InlineData(15.1, 0.86, false)]
    [InlineData(33, 0.86, false)]
    [InlineData(33.1, 0.86, true)]
    [InlineData(45, 0.86, true)]
    [InlineData(45.1, 1, true)]
    public void Table_E_52_1_and_its_limits(double percent, double factor, bool onNeutral) =>
        Assert.Equal(new HarmonicSizing(factor, onNeutral), HarmonicSizing.For(percent));

    [Theory]
    [InlineData(10, "39.0")]
    [InlineData(20, "45.3")]
    [InlineData(40, "54.4")]
    [InlineData(50, "58.5")]
    public void The_worked_example_of_39_amperes(double percent, string design)
    {
        var row = HarmonicSizing.For(percent);
        var current = row.OnNeutral ? 39 * percent / 100 * 3 : 39;
        Near.AsPrinted(design, current / row.Factor);
    }

    [Fact]
    public void Twenty_amperes_with_35_percent_third_put_21_A_on_the_neutral()
    {
        var rms = 20 * Math.Sqrt(1 + (0.35 * 0.35));
        var sum = PhasorSum.On(LegAngles.ThreePhase).OnEveryLeg(ElectricCurrent.FromAmperes(rms), Angle.Zero, Spectrum.Third(0.35));
        Near.AsPrinted("21.2", sum.Leg(0).Amperes);
        Near.AsPrinted("7.0", sum.LegOf(0, 3));
        Near.AsPrinted("21.0", sum.Neutral.Amperes);
    }

    [Fact]
    public void A_third_of_third_harmonic_makes_the_neutral_about_equal_to_the_line()
    {
        var sum = PhasorSum.On(LegAngles.ThreePhase).OnEveryLeg(ElectricCurrent.FromAmperes(10), Angle.Zero, Spectrum.Third(1.0 / 3));
        Near.WithinPercent(10, sum.Neutral.Amperes, 6);
    }

    [Fact]
    public void With_60_percent_third_the_neutral_is_1_54_times_the_line()
    {
        // The table asks for the share of the whole line current, which is less than the share of the fundamental.
        var sum = PhasorSum.On(LegAngles.ThreePhase).OnEveryLeg(ElectricCurrent.FromAmperes(10), Angle.Zero, Spectrum.Third(0.6));
        Near.AsPrinted("1.54", sum.Neutral.Amperes / sum.Leg(0).Amperes);
        Near.AsPrinted("51.4", sum.ShareOf(0, 3).Percent);
    }
}
