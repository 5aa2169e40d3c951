using CsCheck;

namespace Advance.Tests.Workings;

/// <summary>The pocket calculator itself, against numbers that anybody can check, and its refusals.</summary>
public sealed class EvaluatorTests
{
    [Theory]
    [InlineData("x = 2 + 3 · 4", 14)]
    [InlineData("x = (2 + 3) · 4", 20)]
    [InlineData("x = 2 - 3 - 4", -5)]
    [InlineData("x = 24 / 2 / 3", 4)]
    [InlineData("x = 24 / (2 · 3)", 4)]
    [InlineData("x = -2²", -4)]
    [InlineData("x = (-2)²", 4)]
    [InlineData("x = 2³ · 10⁻²", 0.08)]
    [InlineData("x = 10^(6 / 20)", 1.9952623149688795)]
    [InlineData("x = 2 · -3", -6)]
    [InlineData("x = √3 · 2", 3.4641016151377544)]
    [InlineData("x = √(3² + 4²)", 5)]
    [InlineData("x = |3 - 5| + |-1|", 3)]
    [InlineData("x = ⌈2.1⌉ + ⌊2.9⌋", 5)]
    [InlineData("x = ⌈10 · 10 / 100⌉", 1)]
    [InlineData("x = ⌈3⌉ + ⌊3⌋", 6)]
    [InlineData("x = max(1, 2 + 5, 3)", 7)]
    [InlineData("x = min(4, max(1, 2))", 2)]
    [InlineData("x = cos(π / 3) + sin 0", 0.5)]
    [InlineData("x = 2 · cos 0 · 3", 6)]
    [InlineData("x = 20 · log10(100)", 40)]
    [InlineData("x = 4 · atan(1) - π", 0)]
    [InlineData("x = acos(1) + asin 0 + tan 0 + ln 1", 0)]
    public void Numbers_alone(string formula, double expected) => Assert.Equal(expected, Evaluate(formula), 12);

    [Theory]
    [InlineData("c = 331.3 · √(1 + T / 273.15)", 343.2146, "T", 20)]
    [InlineData("ΔU = 2 · I · L · R", 9.6, "I", 16, "L", 30, "R", 0.01)]
    [InlineData("s = max(m, ⌈p · n / 100⌉)", 3, "m", 1, "p", 12.5, "n", 17)]
    [InlineData("s = max(m, ⌈p · n / 100⌉), or 0 where n = 0", 0, "m", 1, "p", 10, "n", 0)]
    [InlineData("s = max(m, ⌈p · n / 100⌉), or 0 where n = 0", 2, "m", 1, "p", 10, "n", 11)]
    [InlineData("q = a / b, or 1 where b = 0", 1, "a", 3, "b", 0)]
    [InlineData("d = √((x₁ - x₂)² + (y₁ - y₂)²)", 5, "x₁", 4, "x₂", 1, "y₁", 0, "y₂", 4)]
    [InlineData("z = r · cos φ + x · sin φ", 1, "r", 1, "x", 5, "φ", 0)]
    [InlineData("I = P / (√3 · V · pf)", 4.4297, "P", 1500, "V", 230, "pf", 0.85)]
    public void With_symbols(string formula, double expected, params object[] put) =>
        Assert.Equal(expected, Evaluate(formula, put), 3);

    [Theory]
    [InlineData("W = Σ wᵢ", 9)]
    [InlineData("Z = 1 / Σ (1 / wᵢ)", 1.0)]
    [InlineData("Q = √(Σ wᵢ²)", 5.385164807)]
    [InlineData("M = Σ wᵢ · k", 18)]
    [InlineData("M = Σ wᵢ · wᵢ + k", 31)]
    [InlineData("L = max wᵢ", 4)]
    [InlineData("L = max(wᵢ, 7)", 7)]
    public void With_lists(string formula, double expected)
    {
        var list = formula.Contains('Z') ? Amounts.List([2, 4, 4]) : Amounts.List([2, 3, 4]);
        var inputs = new Dictionary<string, Amounts>(StringComparer.Ordinal) { ["wᵢ"] = list };
        if (formula.Contains('k'))
        {
            inputs["k"] = Amounts.One(2);
        }

        Assert.Equal(expected, Evaluator.Evaluate(formula, inputs), 6);
    }

    [Theory]
    [InlineData("2 + 3")]
    [InlineData("x = ")]
    [InlineData("x = 2 +")]
    [InlineData("x = 2 3")]
    [InlineData("x = 2 · (3")]
    [InlineData("x = ⌈3)")]
    [InlineData("x = |3")]
    [InlineData("x = max(3,")]
    [InlineData("x = y")]
    [InlineData("x = 2 § 3")]
    [InlineData("x = 2, or 3")]
    [InlineData("x = 2, 3 where 1 = 1")]
    [InlineData("x = 2, or 3 where 1")]
    public void What_cannot_be_read_is_refused(string formula) => Assert.Throws<FormulaFault>(() => Evaluate(formula));

    [Fact]
    public void An_input_that_the_formula_does_not_use_is_refused() =>
        Assert.Throws<FormulaFault>(() => Evaluate("x = a", "a", 1, "b", 2));

    [Fact]
    public void A_list_that_nothing_adds_up_is_refused() =>
        Assert.Throws<FormulaFault>(() => Evaluator.Evaluate("x = 2 · a", new Dictionary<string, Amounts>(StringComparer.Ordinal) { ["a"] = Amounts.List([1, 2]) }));

    [Fact]
    public void Lists_of_different_lengths_do_not_go_together() =>
        Assert.Throws<FormulaFault>(() => Evaluator.Evaluate(
            "x = Σ a · b",
            new Dictionary<string, Amounts>(StringComparer.Ordinal) { ["a"] = Amounts.List([1, 2]), ["b"] = Amounts.List([1, 2, 3]) }));

    [Fact]
    public void Sums_and_products_are_those_of_the_machine() =>
        Gen.Select(Gen.Double[-1e3, 1e3], Gen.Double[-1e3, 1e3], Gen.Double[1, 1e3]).Sample((a, b, c) =>
            Assert.Equal((a - b) / c + (a * b), Evaluate("x = (a - b) / c + a · b", "a", a, "b", b, "c", c), 9));

    private static double Evaluate(string formula, params object[] put) =>
        Evaluator.Evaluate(
            formula,
            put.Chunk(2).ToDictionary(pair => (string)pair[0], pair => Amounts.One(Convert.ToDouble(pair[1])), StringComparer.Ordinal));
}
