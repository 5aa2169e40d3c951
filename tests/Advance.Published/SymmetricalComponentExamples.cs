using System.Numerics;
using Advance.Handbook;

namespace Advance.Published;

/// <summary>
/// Symmetrical components: example 3.3.1 of a power engineering textbook as an open set of solutions prints it, the worked numbers of a calculator
/// program for a, c, b rotation, and example 11.1 of Grainger and Stevenson's Power System Analysis (from memory).
/// </summary>
public sealed class SymmetricalComponentExamples
{
    /// <summary>I_R 12 + j24, I_Y 16 - j2, I_B -4 - j6.</summary>
    [Fact]
    public void Textbook_example_3_3_1()
    {
        var parts = SymmetricalComponents.Of(new(12, 24), new(16, -2), new(-4, -6));
        Near.AsPrinted("0.845", parts.Positive.Real);
        Near.AsPrinted("15.1", parts.Positive.Imaginary);
        Near.AsPrinted("3.155", parts.Negative.Real);
        Near.AsPrinted("3.56", parts.Negative.Imaginary);
        Near.AsPrinted("8.0", parts.Zero.Real);
        Near.AsPrinted("5.33", parts.Zero.Imaginary);
    }

    /// <summary>147 at 13°, 154 at 129°, 150 at 237°: given in the order in which they turn backward.</summary>
    [Fact]
    public void Calculator_program()
    {
        var parts = SymmetricalComponents.Of(At(147, 13), At(150, 237), At(154, 129));
        Near.AsPrinted("149.285", parts.Positive.Magnitude);
        Near.AsPrinted("10.135", parts.Negative.Magnitude);
        Near.AsPrinted("14.824", parts.Zero.Magnitude);
        Near.AsPrinted("6.321", parts.Positive.Phase * 180 / Math.PI);
        Near.AsPrinted("49.004", parts.Negative.Phase * 180 / Math.PI);
        Near.AsPrinted("142.704", parts.Zero.Phase * 180 / Math.PI);
    }

    /// <summary>One line open, 10 A in the others: 5.78 A at -30° and 5.78 A at 30°, from memory.</summary>
    [Fact]
    public void One_line_open_from_memory()
    {
        var parts = SymmetricalComponents.Of(At(10, 0), At(10, 180), Complex.Zero);
        Near.WithinPercent(5.78, parts.Positive.Magnitude, 0.2);
        Near.WithinPercent(5.78, parts.Negative.Magnitude, 0.2);
        Near.Within(-30, parts.Positive.Phase * 180 / Math.PI, 1e-9);
        Near.Within(30, parts.Negative.Phase * 180 / Math.PI, 1e-9);
        Near.Within(0, parts.Zero.Magnitude, 1e-9);
        Near.Within(1, parts.Unbalance!.Value.DecimalFractions, 1e-9);
    }

    [Fact]
    public void Balanced_lines_are_not_unbalanced() =>
        Near.Within(0, SymmetricalComponents.Of(At(63, -20), At(63, -140), At(63, 100)).Unbalance!.Value.DecimalFractions, 1e-12);

    /// <summary>One leg alone: all three parts are alike, so |I2| / |I1| is 1; two legs alike: a half.</summary>
    [Theory]
    [InlineData(1, 0, 0, 1)]
    [InlineData(1, 1, 0, 0.5)]
    public void Legs_left_out(double a, double b, double c, double unbalance) =>
        Near.Within(unbalance, SymmetricalComponents.Of(At(a, 0), At(b, -120), At(c, 120)).Unbalance!.Value.DecimalFractions, 1e-12);

    [Fact]
    public void Nothing_has_no_unbalance() => Assert.Null(SymmetricalComponents.Of(0, 0, 0).Unbalance);

    private static Complex At(double amperes, double degrees) => Complex.FromPolarCoordinates(amperes, degrees * Math.PI / 180);
}
