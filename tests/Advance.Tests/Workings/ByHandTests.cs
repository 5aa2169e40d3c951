using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Tests.Workings;

/// <summary>The check itself: it passes what is right and must not pass what is wrong by a digit that is printed.</summary>
public sealed class ByHandTests
{
    [Fact]
    public void A_sum_that_is_right_holds()
    {
        var current = Sum.Of("current", "I = P / (√3 · V · pf)", Publication.Arithmetic)
            .Put("P", Stated(Power.FromWatts(1517.3)))
            .Put("V", Stated(ElectricPotential.FromVolts(230.1)))
            .Put("pf", Stated(0.857))
            .Gives(Currents.ThreePhase);
        Assert.Null(ByHand.Fault(current.How!));
        var share = Sum.Of("spares", "s = max(m, ⌈p · n / 100⌉)", Publication.CommonPractice)
            .Put("m", Figure.Count(1)).Put("p", Stated(10.0)).Put("n", Figure.Count(20)).Gives(Spares.Of);
        Assert.Null(ByHand.Fault(share.How!));
    }

    [Fact]
    public void An_input_that_was_worked_out_is_printed_finely_enough()
    {
        var third = Sum.Of("third", "t = L / 3", Publication.Arithmetic).Put("L", Stated(Length.FromMeters(10))).Gives(length => length / 3);
        var root = Sum.Of("root", "d = √(t²) · 3", Publication.Arithmetic).Put("t", third).Gives(part => part * 3);
        Assert.Null(ByHand.Fault(root.How!));
    }

    [Theory]
    [InlineData("W = 2 · m", 10.0001)] // wrong in the sixth digit
    [InlineData("W = 2 · n", 10)] // another symbol
    [InlineData("W = m", 10)] // a factor forgotten
    [InlineData("W = 2 m", 10)] // the dot forgotten
    [InlineData("2 · m", 10)] // the left side forgotten
    public void A_sum_that_is_wrong_fails(string formula, double result)
    {
        var weight = Sum.Of("weight", formula, Publication.Arithmetic).Put("m", Stated(Mass.FromKilograms(5))).Gives(_ => Mass.FromKilograms(result));
        Assert.NotNull(ByHand.Fault(weight.How!));
    }

    [Fact]
    public void A_count_must_be_exact()
    {
        var count = Sum.Of("count", "n = a / 3", Publication.Arithmetic).Put("a", Figure.Count(10)).Gives(_ => 3);
        Assert.NotNull(ByHand.Fault(count.How!));
    }

    [Fact]
    public void A_formula_in_kilometres_or_in_fractions_of_a_hundred_is_found_out()
    {
        var drop = Sum.Of("drop", "ΔU = 2 · I · L · r / 1000", Publication.Arithmetic)
            .Put("I", Stated(ElectricCurrent.FromAmperes(16)))
            .Put("L", Stated(Length.FromMeters(50)))
            .Put("r", Stated(ResistancePerLength.FromOhmsPerKilometre(8.21)))
            .Gives(VoltageDrop.TwoWire);
        Assert.NotNull(ByHand.Fault(drop.How!));
        var share = Sum.Of("share", "a = s · b", Publication.Arithmetic).Put("s", Stated(Ratio.FromPercent(80))).Put("b", Stated(10.0)).Gives((s, b) => s.DecimalFractions * b);
        Assert.NotNull(ByHand.Fault(share.How!));
    }

    [Fact]
    public void An_unknown_input_makes_an_unknown_result_and_nothing_to_check()
    {
        var sum = Sum.Of("weight", "W = 2 · m", Publication.Arithmetic)
            .Put("m", new Figure<Mass>(null, Doubts.None, Reason.Derived.It)).Gives(mass => mass * 2);
        Assert.Null(ByHand.Fault(sum.How!));
        Assert.NotNull(ByHand.Fault(sum.How! with { Result = Mass.FromKilograms(1) }));
        Assert.NotNull(ByHand.Fault(new Working("weight", "W = 2 · m", [], null, Publication.Arithmetic)));
    }

    [Fact]
    public void Everything_behind_a_working_is_found_once()
    {
        var part = Sum.Of("part", "p = 2 · a", Publication.Arithmetic).Put("a", Figure.Count(3)).Gives(a => 2 * a);
        var list = Sum.Of("list", "l = Σ pᵢ", Publication.Arithmetic).PutAll("pᵢ", [part, part, Figure.Count(1)]).Gives(terms => terms.Values.Sum());
        var whole = Sum.Of("whole", "w = l + p", Publication.Arithmetic).Put("l", list).Put("p", part).Gives((l, p) => l + p);
        var names = ByHand.Behind([whole.How!, part.How!]).Select(working => working.Name).ToList();
        Assert.Equal(["list", "part", "whole"], names.Order(StringComparer.Ordinal));
        Assert.All(ByHand.Behind([whole.How!]), working => Assert.Null(ByHand.Fault(working)));
    }

    private static Figure<T> Stated<T>(T value)
        where T : struct, IComparable<T> => new(value, Doubts.None, new Reason.Fixed(new Mark("gig.yaml", 1, 1)));
}
