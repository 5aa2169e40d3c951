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
        { new Terms<Mass>([Mass.FromKilograms(1.5), Mass.FromKilograms(2)]), "1.5 kg + 2 kg" },
    };

    [Theory]
    [MemberData(nameof(Said))]
    public void A_value_is_said_to_six_digits_in_units_of_the_SI(object value, string said) => Assert.Equal(said, Precisely.Say(value));
}
