namespace Advance.Tests.Workings;

public sealed class PrintedTests
{
    [Theory]
    [InlineData("2.5 A", 2.5)]
    [InlineData("350 mA", 0.35)]
    [InlineData("12.5 %", 12.5)]
    [InlineData("3.5 ms", 0.0035)]
    [InlineData("-7.5°", -0.1308996938995747)]
    [InlineData("20 °C", 20)]
    [InlineData("8.21 mΩ/m", 0.00821)]
    [InlineData("17", 17)]
    [InlineData("45 min", 2700)]
    public void A_value_in_base_units(string text, double expected) => Assert.Equal(expected, Printed.Read(text).Single().Value, 12);

    [Fact]
    public void A_list_is_printed_as_a_sum() =>
        Assert.Equal([2.5, 3, 0.35], Printed.Read("2.5 A + 3 A + 350 mA").Select(term => Math.Round(term.Value, 9)));

    [Theory]
    [InlineData("2.5 B")]
    [InlineData("about 3 A")]
    [InlineData("")]
    [InlineData("1.2.3 A")]
    public void What_is_no_value_is_refused(string text) => Assert.Throws<FormulaFault>(() => Printed.Read(text));

    [Theory]
    [InlineData("2.5 A", 6, 5e-6)]
    [InlineData("31.9437 A", 6, 5e-5)]
    [InlineData("31.9437 mA", 6, 5e-8)]
    [InlineData("1234567 m", 6, 0.5)]
    [InlineData("0 m", 6, 0)]
    public void Half_a_unit_in_the_last_digit_that_counts(string text, int digits, double half) =>
        Assert.Equal(half, Printed.Read(text).Single().HalfUnit(digits), 12);

    [Theory]
    [InlineData("0.0025 A", 6, 0)]
    [InlineData("0.00256789 A", 6, 5e-9)]
    public void What_needs_fewer_digits_is_exact(string text, int digits, double rounding) =>
        Assert.Equal(rounding, Printed.Read(text).Single().Rounding(digits), 12);
}
