using Advance.Domain.Facts;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Tests.Domain;

public sealed class SpeechTests
{
    public static TheoryData<object, string, string> Sayings => new()
    {
        { Length.FromMeters(1.48), "1.48 m", "4' 10.5\"" },
        { Length.FromFeet(12), "3.66 m", "12'" },
        { Length.FromMeters(-0.4), "-0.4 m", "-1' 3.5\"" },
        { Mass.FromKilograms(52), "52 kg", "115 lb" },
        { Power.FromKilowatts(2.4), "2.4 kW", "2.4 kW" },
        { ElectricCurrent.FromMilliamperes(30), "30 mA", "30 mA" },
        { ElectricCurrent.FromAmperes(63), "63 A", "63 A" },
        { new WrittenDate(DayOfWeek.Saturday, 12, 9, 2026), "Sat 12 Sep 2026", "Sat 12 Sep 2026" },
        { new WrittenDate(null, 4, 9, null), "4 Sep", "4 Sep" },
        { Length.FromInches(7), "0.18 m", "7\"" },
        { new FineLength(Length.FromMillimeters(25.4)), "25.4 mm", "1\"" },
        { Force.FromKilonewtons(1), "1 kN", "225 lbf" },
        { Torque.FromKilonewtonMeters(1), "1 kNm", "738 lbf·ft" },
        { Pressure.FromKilonewtonsPerSquareMeter(5), "5 kN/m²", "104 lb/ft²" },
        { Speed.FromMetersPerSecond(17), "17 m/s", "38 mph" },
        { Speed.FromMetersPerSecond(343.2), "343.2 m/s", "1126 ft/s" },
        { Temperature.FromDegreesCelsius(20), "20 °C", "68 °F" },
        { Area.FromSquareMeters(1), "1 m²", "10.8 ft²" },
        { Volume.FromCubicMeters(1), "1 m³", "35 ft³" },
        { ElectricCurrent.FromKiloamperes(18), "18 kA", "18 kA" },
        { Duration.FromMilliseconds(4.2), "4.2 ms", "4.2 ms" },
    };

    [Theory]
    [MemberData(nameof(Sayings))]
    public void Values_are_said_in_the_units_of_the_paper(object value, string metric, string us)
    {
        Assert.Equal(metric, Speech.Metric.Say(value));
        Assert.Equal(us, Speech.UsCustomary.Say(value));
    }

    [Fact]
    public void A_sentence_keeps_its_numbers_until_it_is_said()
    {
        Words says = $"The sub weighs {Mass.FromKilograms(52)}, {2} of them.";
        Assert.Equal("The sub weighs 52 kg, 2 of them.", Speech.Metric.Say(says));
        Assert.Equal("The sub weighs 115 lb, 2 of them.", Speech.UsCustomary.Say(says));
    }

    [Theory]
    [InlineData(0.5, 0, "1")]
    [InlineData(-0.04, 1, "0")]
    [InlineData(2.50, 2, "2.5")]
    [InlineData(1234567.0, 2, "1234567")]
    [InlineData(626.49999999999989, 0, "627")]
    [InlineData(626.4999, 0, "626")]
    public void Numbers_have_no_needless_noughts_and_no_minus_nought(double value, int decimals, string expected) =>
        Assert.Equal(expected, Numbers.Plain(value, decimals));
}
