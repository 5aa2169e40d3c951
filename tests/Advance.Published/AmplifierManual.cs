using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>A two-channel amplifier's manual: its table of mains draw and heat at a third and an eighth of rated output, 115 W idle.</summary>
public sealed class AmplifierManual
{
    [Theory]
    [InlineData(2 * 1100, 1060, 327, 530, 255)]
    [InlineData(2 * 1500, 1440, 440, 685, 310)]
    [InlineData(2 * 1700, 1720, 587, 845, 420)]
    public void Heat_is_what_does_not_leave_as_sound(double rated, double third, double thirdHeat, double eighth, double eighthHeat)
    {
        Near.Within(thirdHeat, HeatOf(rated, Programme.BassHeavy, third), 0.5);
        Near.Within(eighthHeat, HeatOf(rated, Programme.Music, eighth), 0.5);
    }

    [Theory]
    [InlineData(2 * 1100, 1060, 530)]
    [InlineData(2 * 1500, 1440, 685)]
    [InlineData(2 * 1700, 1720, 845)]
    public void The_share_of_the_output_alone_would_understate_the_draw(double rated, double third, double eighth)
    {
        Assert.True((double)OutputOf(rated, Programme.BassHeavy).Watts < third * 0.75);
        Assert.True((double)OutputOf(rated, Programme.Music).Watts < eighth * 0.6);
    }

    [Theory]
    [InlineData(2 * 1100, 1060, 0.776, Programme.BassHeavy)]
    [InlineData(2 * 1500, 1440, 0.7547, Programme.BassHeavy)]
    [InlineData(2 * 1500, 685, 0.6579, Programme.Music)]
    public void The_model_meets_the_table_with_the_efficiency_that_it_implies(double rated, double mains, double efficiency, Programme programme)
    {
        var drawn = AmplifierDraw.FromMains(Power.FromWatts(115), Power.FromWatts(rated), AmplifierDraw.ShareOf(programme), efficiency);
        Near.WithinPercent(mains, (double)drawn.Watts, 0.1);
    }

    [Fact]
    public void An_eighth_is_nine_decibels_of_headroom() =>
        Near.AsPrinted("9.03", -10 * Math.Log10(AmplifierDraw.ShareOf(Programme.Music)));

    private static double HeatOf(double rated, Programme programme, double mains) =>
        (double)AmplifierDraw.Heat(Power.FromWatts(mains), OutputOf(rated, programme)).Watts;

    private static Power OutputOf(double rated, Programme programme) => AmplifierDraw.Output(Power.FromWatts(rated), AmplifierDraw.ShareOf(programme));
}
