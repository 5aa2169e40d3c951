using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>Speed of sound in dry air: points that pages print from the exact formula, and how far the linear one is from them.</summary>
public sealed class SpeedOfSoundTables
{
    [Theory]
    [InlineData(20, 343.20358)] // 68 °F
    [InlineData(35, 351.87462)]
    [InlineData(6.85, 335.41762)] // 280 K
    public void A_forum_thread_with_20_045037_times_the_root_of_the_kelvins(double celsius, double speed) =>
        // That is 331.289 m/s at 0 °C, where 331.3 is the rounded value in use.
        Near.WithinPercent(speed, At(celsius), 0.004);

    [Theory]
    [InlineData(0, "331.30")]
    [InlineData(20, "343.21")]
    public void An_encyclopaedia(double celsius, string speed) => Near.AsPrinted(speed, At(celsius));

    [Theory]
    [InlineData(-15, "322.07")]
    [InlineData(10, "337.31")]
    [InlineData(15, "340.28")]
    [InlineData(25, "346.13")]
    [InlineData(30, "349.02")]
    [InlineData(40, "354.73")]
    public void Worked_here(double celsius, string speed) => Near.AsPrinted(speed, At(celsius));

    [Theory]
    [InlineData(-15, 322.2)]
    [InlineData(20, 343.4)]
    [InlineData(40, 355.54)]
    public void The_linear_rule_is_near_but_too_fast_away_from_zero(double celsius, double linear) => Assert.InRange(linear - At(celsius), 0.05, 0.9);

    [Fact]
    public void In_feet_it_is_1130_a_second_at_21_degrees() => Near.WithinPercent(1130, At(21) / 0.3048, 0.4);

    private static double At(double celsius) => SoundSpeed.In(Temperature.FromDegreesCelsius(celsius)).MetersPerSecond;
}
