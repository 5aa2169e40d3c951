using Advance.Paper.Tree;
using Cell = Advance.Sheets.Views.Cell;

namespace Advance.Tests.Sheets.Views;

public sealed class CellTests
{
    [Fact]
    public void A_number_has_its_value_beside_its_text()
    {
        Assert.Equal(new Cell("2.5") { Value = new NumberValue(2.5, "kg") }, Cell.Number(2.5, "2.5", "kg"));
        Assert.Equal(new Cell("12") { Value = new NumberValue(12) }, Cell.Number(12));
        Assert.Equal(new Cell("7") { Value = new SumValue(7) }, Cell.Sum(7, "7"));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_number_has_no_value(double amount)
    {
        Assert.Null(Cell.Number(amount, "–").Value);
        Assert.Null(Cell.Sum(amount, "–").Value);
    }

    [Fact]
    public void Dates_and_times_are_said_as_everywhere_on_paper()
    {
        Assert.Equal("Sat 12 Sep 2026", Cell.Date(new DateOnly(2026, 9, 12)).Text);
        Assert.Equal("09:05", Cell.Time(new TimeOnly(9, 5)).Text);
        Assert.Equal(new DateValue(new DateOnly(2026, 9, 12)), Cell.Date(new DateOnly(2026, 9, 12), "Saturday").Value);
        Assert.Equal(new TimeValue(new TimeOnly(0, 30)), Cell.Time(new TimeOnly(0, 30), "00:30 +1").Value);
        Assert.Equal(new MomentValue(new DateTime(2026, 9, 12, 19, 30, 0)), Cell.Moment(new DateTime(2026, 9, 12, 19, 30, 0), "tonight").Value);
    }

    [Fact]
    public void Only_a_cell_that_prints_nothing_is_blank()
    {
        Assert.True(Cell.Of("").IsBlank);
        Assert.False(Cell.Of(" ").IsBlank);
        Assert.False((Cell.Blank with { Tbc = "" }).IsBlank);
        Assert.False((Cell.Blank with { Verdict = Verdict.CannotBeJudged }).IsBlank);
    }
}
