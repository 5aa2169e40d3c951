using Advance.Paper.Tree;
using Cell = Advance.Sheets.Views.Cell;

namespace Advance.Tests.Sheets.Templating;

public sealed class CellPrintingTests
{
    public static TheoryData<Cell, string> Cells { get; } = new()
    {
        { Cell.Of("a & b"), "a &amp; b" },
        { Cell.Blank, "" },
        { Cell.Number(10), "<data value=\"10\">10</data>" },
        { Cell.Number(0.1 + 0.2, "0.3", "m"), "<data value=\"0.30000000000000004\" data-unit=\"m\">0.3</data>" },
        { new Cell("1.50") { Value = new NumberValue(1.5) { Decimals = 2 } }, "<data value=\"1.5\" data-decimals=\"2\">1.50</data>" },
        { Cell.Sum(25.4, "25.4"), "<data class=\"sum\" value=\"25.4\">25.4</data>" },
        { Cell.Date(new DateOnly(2026, 9, 12)), "<time datetime=\"2026-09-12\">Sat 12 Sep 2026</time>" },
        { Cell.Time(new TimeOnly(19, 30)), "<time datetime=\"19:30:00\">19:30</time>" },
        { Cell.Moment(new DateTime(2026, 9, 12, 19, 30, 0), "Sat"), "<time datetime=\"2026-09-12T19:30:00\">Sat</time>" },
        { Cell.Of("x") with { Strong = true }, "<strong>x</strong>" },
        { Cell.Of("TN-S") with { Tbc = "<who>" }, "TN-S <mark class=\"tbc\">TBC &lt;who&gt;</mark>" },
        { Cell.Blank with { Tbc = "" }, "<mark class=\"tbc\">TBC</mark>" },
        { Cell.Number(5) with { Tbc = "", Verdict = Verdict.Fails }, "<span class=\"judged\" data-verdict=\"fails\"><data value=\"5\">5</data> <mark class=\"tbc\">TBC</mark></span>" },
        { Cell.Of("?") with { Verdict = Verdict.CannotBeJudged }, "<span class=\"judged\" data-verdict=\"cannot-be-judged\">?</span>" },
    };

    [Theory]
    [MemberData(nameof(Cells))]
    public void A_cell_prints_all_there_is_to_it(Cell cell, string markup) =>
        Assert.Equal(markup, Rendering.Text("{{ cell }}", new OneCell(cell)));

    [Theory]
    [InlineData("{{ cell.text + \"!\" }}", "10!")]
    [InlineData("{{ cell.text == \"10\" ? \"ten\" : \"other\" }}", "ten")]
    [InlineData("{{ cell.verdict }} {{ cell.tbc }}", "cannot-be-judged band")]
    [InlineData("{{ if cell.strong }}strong{{ else }}plain{{ end }}", "plain")]
    public void Its_parts_can_be_had_one_by_one(string template, string text) =>
        Assert.Equal(text, Rendering.Text(template, new OneCell(Cell.Number(10) with { Tbc = "band", Verdict = Verdict.CannotBeJudged })));

    [Theory]
    [InlineData("{{ ¦cell + \"!\" }}")]
    [InlineData("{{ \"!\" == ¦cell }}")]
    [InlineData("{{ $\"{¦cell}!\" }}")]
    [InlineData("{{ string.upcase ¦cell }}")]
    [InlineData("{{ ¦[cell] | array.join \", \" }}")]
    public void It_is_never_taken_for_its_words_alone(string template)
    {
        var fault = Assert.Single(Rendering.Render(template.Replace("¦", "", StringComparison.Ordinal), new OneCell(Cell.Number(10))).Faults);
        Assert.Contains("add `.text`", fault.Says, StringComparison.Ordinal);
    }

    private sealed record OneCell(Cell Cell);
}
