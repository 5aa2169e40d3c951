using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Wording;
using UnitsNet;

namespace Advance.Tests.Domain;

public sealed class PreciselyTests
{
    public static TheoryData<object, string> Said => new()
    {
        { 12, "12" },
        { 1 / 3.0, "0.333333" },
        { 123456.789, "123457" },
        { -0.0, "0" },
        { Length.FromMillimeters(12), "0.012 m" },
        { ElectricCurrent.FromMilliamperes(3.5), "3.5 mA" },
        { ElectricCurrent.FromAmperes(31.94), "31.94 A" },
        { Duration.FromMilliseconds(2.91375), "2.91375 ms" },
        { Ratio.FromPercent(4.25), "4.25 %" },
        { ElectricResistance.FromMilliohms(35), "35 mΩ" },
        { -1e-20, "0" },
        { new ResistancePerLength(0.00821), "8.21 mΩ/m" },
        { Level.FromDecibels(-0.347), "-0.347 dB" },
        { ElectricApparentPower.FromKilovoltamperes(71.9), "71900 VA" },
        { Area.FromSquareMillimeters(2.5), "0.0000025 m²" },
        { new Terms<Mass>([]), "0" },
        { new Terms<Mass>([Mass.FromKilograms(1.5), Mass.FromKilograms(2)]), "1.5 kg + 2 kg" },
    };

    [Theory]
    [MemberData(nameof(Said))]
    public void A_value_is_said_to_six_digits_in_units_of_the_SI(object value, string said) => Assert.Equal(said, Precisely.Say(value));

    [Fact]
    public void An_input_is_said_to_nine_digits()
    {
        Assert.Equal("0.333333333", Precisely.SayInput(1 / 3.0));
        Assert.Equal("31.94 A", Precisely.SayInput(ElectricCurrent.FromAmperes(31.94)));
        Assert.Equal("1.5 kg + 0.333333333 kg", Precisely.SayInput(new Terms<Mass>([Mass.FromKilograms(1.5), Mass.FromKilograms(1 / 3.0)])));
    }
}
