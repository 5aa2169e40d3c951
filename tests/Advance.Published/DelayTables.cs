using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>Delay for distance, as articles on delay towers print it, and what follows from it for subs (worked here).</summary>
public sealed class DelayTables
{
    private static readonly Speed At20 = Speed.FromMetersPerSecond(343.2);

    [Theory]
    [InlineData(10, "29")]
    [InlineData(30, "87")]
    public void An_article_with_343_metres_a_second(double metres, string milliseconds) =>
        Near.AsPrinted(milliseconds, Delays.Over(Length.FromMeters(metres), Speed.FromMetersPerSecond(343)).Milliseconds);

    [Theory]
    [InlineData(1, "2.91")]
    [InlineData(10, "29.14")]
    [InlineData(30, "87.41")]
    [InlineData(34.3, "99.94")]
    [InlineData(50, "145.69")]
    [InlineData(75, "218.53")]
    public void Worked_here_at_20_degrees(double metres, string milliseconds) =>
        Near.AsPrinted(milliseconds, Delays.Over(Length.FromMeters(metres), At20).Milliseconds);

    [Fact]
    public void There_and_back() => Near.Within(34.3, Delays.Path(Duration.FromMilliseconds(99.94), At20).Meters, 0.002);

    [Fact]
    public void Seventy_five_metres_arrive_seven_milliseconds_sooner_at_38_degrees()
    {
        // 6.7 ms with the linear rule 331.4 + 0.6 T.
        var path = Length.FromMeters(75);
        var cold = Delays.Over(path, SoundSpeed.In(Temperature.FromDegreesCelsius(20)));
        var warm = Delays.Over(path, SoundSpeed.In(Temperature.FromDegreesCelsius(38)));
        Near.Within(6.7, (cold - warm).Milliseconds, 0.3);
    }

    [Fact]
    public void A_fill_waits_for_the_difference_of_the_paths() =>
        Near.AsPrinted("58.28", Delays.Between(Length.FromMeters(30), Length.FromMeters(10), At20).Milliseconds);

    [Fact]
    public void A_metre_is_a_quarter_wave_of_85_8_Hz_and_2_91_ms()
    {
        var metre = Length.FromMeters(1);
        Near.AsPrinted("85.8", QuarterWave.FrequencyOf(metre, At20).Hertz);
        Near.Within(1, QuarterWave.SpacingFor(Frequency.FromHertz(85.8), At20).Meters, 1e-9);
        Near.AsPrinted("2.91", SubDelays.Gradient(metre, At20).Milliseconds);
    }

    [Theory]
    [InlineData(0, "0")]
    [InlineData(1, "2.91")]
    [InlineData(3, "8.74")]
    public void End_fire_from_the_rear_from_memory(int place, string milliseconds) =>
        Near.AsPrinted(milliseconds, SubDelays.EndFire(place, Length.FromMeters(1), At20).Milliseconds);
}
