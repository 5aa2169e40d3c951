using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Tests.Domain;

public sealed class FigureTests
{
    private static readonly Mark Here = new("gig.yaml", 3, 5);
    private static readonly Doubt Rating = new("services / A / rating", Here, "venue");
    private static readonly Doubt Length = new("feeder / length", new Mark("gig.yaml", 9, 5));

    [Fact]
    public void Doubts_travel_along_the_inputs_and_each_is_kept_once()
    {
        var rating = Figure.From(Given.Of(63, Here, Rating));
        var length = Figure.From(Given.Of(25, Here, Length));
        var once = Sum.Of("x", "x = a · b", Publication.Arithmetic).Put("a", rating).Put("b", length).Gives((a, b) => a * b);
        var twice = Sum.Of("y", "y = x + a", Publication.Arithmetic).Put("x", once).Put("a", rating).Gives((x, a) => x + a);

        Assert.Equal(1638, twice.Value);
        Assert.Equal([Rating, Length], twice.RestsOn);
    }

    [Fact]
    public void An_unknown_input_makes_an_unknown_result_and_never_a_nought()
    {
        var unknown = Figure.From(Given.Unknown<int>(Here, Rating));
        var sum = Sum.Of("t", "t = Σ a", Publication.Arithmetic).PutAll("a", [Figure.Count(3), unknown]).Gives(terms => terms.Values.Sum());

        Assert.Null(sum.Value);
        Assert.Equal([Rating], sum.RestsOn);
        Assert.Equal(Verdict.CannotBeJudged, sum.AtMost(Figure.Count(10)));
        Assert.Equal(Verdict.CannotBeJudged, Figure.Count(3).AtMost(sum));
    }

    [Fact]
    public void A_working_keeps_what_was_put_in_and_what_came_out()
    {
        var figure = Sum.Of("spares", "s = p · n", Publication.CommonPractice)
            .Put("p", Figure.Policy("spare-mics", 2))
            .Put("n", Figure.Count(7))
            .Gives((p, n) => p * n);

        Assert.Equal(14, figure.How!.Result);
        Assert.Equal(["p", "n"], figure.How.Inputs.Select(input => input.Symbol));
        Assert.Equal(new Reason.Policy("spare-mics"), figure.How.Inputs[0].Why);
    }

    [Theory]
    [InlineData(100, 100, Verdict.Holds)]
    [InlineData(100.00000005, 100, Verdict.Holds)]
    [InlineData(100.000001, 100, Verdict.Fails)]
    [InlineData(99, 100, Verdict.Holds)]
    public void A_limit_is_met_within_a_billionth(double value, double limit, Verdict expected)
    {
        Assert.Equal(expected, Kilograms(value).AtMost(Kilograms(limit)));
        Assert.Equal(expected, Kilograms(limit).AtLeast(Kilograms(value)));
    }

    [Fact]
    public void Units_do_not_matter_to_a_limit()
    {
        var pound = new Figure<Mass>(Mass.FromPounds(1), Doubts.None, Reason.Derived.It);
        Assert.Equal(Verdict.Holds, pound.AtMost(Kilograms(0.45359237)));
        Assert.Equal(Verdict.Fails, pound.AtMost(Kilograms(0.4535)));
    }

    private static Figure<Mass> Kilograms(double value) => new(Mass.FromKilograms(value), Doubts.None, Reason.Derived.It);
}
