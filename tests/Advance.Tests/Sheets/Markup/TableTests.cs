using Advance.Paper.Tree;

namespace Advance.Tests.Sheets.Markup;

public sealed class TableTests
{
    [Fact]
    public void A_column_has_its_head_and_its_hints()
    {
        var table = Table("<td/>", columns: """
            <col class="key strong" data-key="ch" data-unit="A" data-align="right" data-least="5" data-most="20" data-grow="2"/>
            <col data-key="feeds" data-fixed="30"/>
            """);
        TableColumn[] columns =
        [
            new("ch", [new Text("One")]) { Unit = "A", Align = Align.Right, Strong = true, IsKey = true, LeastMm = 5, MostMm = 20, Grow = 2 },
            new TableColumn("feeds", [new Text("Two")]).Fixed(30),
        ];
        Assert.Equal(TreeText.Of(columns), TreeText.Of(table.Columns));
    }

    [Fact]
    public void A_cell_has_its_span_its_verdict_and_its_value()
    {
        var table = Table("""
            <td colspan="2" data-verdict="fails" data-value="2.5" data-unit="kg">a</td></tr>
            <tr><td data-value="2026-09-12">b</td><td><data value="3">3</data></td>
            """);
        Row[] rows =
        [
            new([new Cell([new Text("a")]) { Span = 2, Verdict = Verdict.Fails, Value = new NumberValue(2.5, "kg") }]),
            new([new Cell([new Text("b")]) { Value = new DateValue(new DateOnly(2026, 9, 12)) }, new Cell([new Datum("3", new NumberValue(3))])]),
        ];
        Assert.Equal(TreeText.Of(rows), TreeText.Of(Assert.Single(table.Groups).Rows));
    }

    [Theory]
    [InlineData("", RowKind.Normal, false)]
    [InlineData("sub", RowKind.Sub, false)]
    [InlineData("hold", RowKind.Hold, false)]
    [InlineData("total joins", RowKind.Total, true)]
    public void A_row_has_its_kind_in_its_class(string words, RowKind kind, bool joins)
    {
        var row = Table($"<td/></tr><tr id=\"r\" class=\"{words}\"><td/>").Groups[0].Rows[1];
        Assert.Equal((kind, joins, "r"), (row.Kind, row.JoinsNext, row.Id));
    }

    [Fact]
    public void Rows_that_head_a_group_and_bodies_part_the_rows()
    {
        var table = Table("<td>1</td></tr><tr class=\"group\" id=\"g\"><td><strong>G</strong></td></tr><tr><td>2</td></tr></tbody><tbody><tr><td>3</td>");
        Assert.Equal(["1", "2", "3"], table.Groups.Select(group => ((Text)group.Rows.Single().Cells[0].Text[0]).Value));
        Assert.Equal([null, "g", null], table.Groups.Select(group => group.Id));
        Assert.Equal(TreeText.Of(new[] { new Text("G", TextStyle.Strong) }), TreeText.Of(table.Groups[1].Head));
    }

    [Fact]
    public void A_group_may_be_empty() =>
        Assert.Equal([0, 0], Table("<td>A</td></tr><tr class=\"group\"><td>B</td>", first: "group").Groups.Select(group => group.Rows.Count));

    [Fact]
    public void A_table_has_its_caption_its_foot_and_words_for_when_it_is_empty()
    {
        var table = Reading.Block<Table>("""
            <table id="t">
              <caption>PD<strong>1</strong></caption>
              <colgroup><col data-key="a"/></colgroup>
              <thead class="off-paper"><tr><th/></tr></thead>
              <tbody><tr class="when-empty"><td>none</td></tr></tbody>
              <tfoot><tr class="total"><td>sum</td></tr></tfoot>
            </table>
            """);
        var expected = new Table([new("a", [])], [])
        {
            Id = "t",
            Caption = [new Text("PD"), new Text("1", TextStyle.Strong)],
            Foot = [new([new Cell([new Text("sum")])]) { Kind = RowKind.Total }],
            WhenEmpty = [new Text("none")],
            ShowsHead = false,
        };
        Assert.Equal(TreeText.Of(expected), TreeText.Of(table));
    }

    [Fact]
    public void A_picture_stands_level_with_the_rows_of_a_table()
    {
        var block = Reading.Block<Alongside>("""
            <div class="alongside" id="a" data-share="0.5">
              <figure data-drawing="example"/>
              <table>
                <colgroup><col data-key="a"/></colgroup>
                <thead><tr><th>Unit</th></tr></thead>
                <tbody>
                  <tr data-top="-20" data-bottom="0"><td>L1</td></tr>
                  <tr class="group"><td>floor</td></tr>
                  <tr data-top="0" data-bottom="580.5"><td>L2</td></tr>
                </tbody>
              </table>
            </div>
            """);
        Assert.Equal([new Band(-20, 0), new Band(0, 580.5)], block.Bands);
        Assert.Equal((0.5, "a"), (block.PictureShare, block.Id));
        Assert.Same(Reading.Scene, block.Scene);
        Assert.Equal(2, block.Table.Groups.Sum(group => group.Rows.Count));
    }

    private static Table Table(string rows, string columns = "<col data-key=\"a\"/><col data-key=\"b\"/>", string first = "") => Reading.Block<Table>(
        $"<table><colgroup>{columns}</colgroup><thead><tr><th>One</th><th>Two</th></tr></thead><tbody><tr class=\"{first}\">{rows}</tr></tbody></table>");
}
