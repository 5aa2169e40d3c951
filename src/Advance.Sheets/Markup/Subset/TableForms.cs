using Advance.Paper.Tree;

namespace Advance.Sheets.Markup.Subset;

/// <summary>The parts of a table.</summary>
internal static class TableForms
{
    private const Content Sentence = Content.Text | Content.Line;

    private static readonly ClassWord[] RowWords =
    [
        new("group", "opens a group; its one field stands over it, and again on each page"),
        new("sub", "a companion of the row above"),
        new("hold", "a point where all stop; its first field takes the full width"),
        new("total", "a total"),
        new("joins", "a bracket joins it to the next row"),
        new("when-empty", "printed when there are no other rows; its one field takes the full width"),
    ];

    public static IReadOnlyList<Form> All { get; } =
    [
        new("table", null, Content.Block | Content.Level, Content.TablePart)
        {
            Means = "a table: columns, their heads, and rows",
            Gives = typeof(Table),
            Example = """
                <table>
                  <caption>Circuits of PD1</caption>
                  <colgroup>
                    <col class="key strong" data-key="circuit"/><col data-key="feeds" data-grow="1"/>
                    <col data-key="use" data-unit="A" data-align="right"/>
                  </colgroup>
                  <thead><tr><th>Cct</th><th>Feeds</th><th>In use</th></tr></thead>
                  <tbody>
                    <tr class="group"><td>Stage right</td></tr>
                    <tr id="pd1-1">
                      <td><data value="1">1</data></td><td>Main SR</td><td data-verdict="fails"><data value="25.4">25.4</data></td>
                    </tr>
                    <tr class="sub"><td/><td colspan="2">linked box to box</td></tr>
                    <tr class="when-empty"><td>No circuit is used.</td></tr>
                  </tbody>
                  <tfoot><tr class="total"><td colspan="2">PD1 altogether</td><td><data class="sum" value="25.4">25.4</data></td></tr></tfoot>
                </table>
                """,
            Attributes = [BlockForms.Id],
        },
        new("caption", null, Content.TablePart, Sentence) { Means = "set over the table; names it in the workbook", Gives = typeof(Table) },
        new("colgroup", null, Content.TablePart, Content.Column) { Means = "the columns, from left to right", Gives = typeof(Table) },
        new("col", null, Content.Column, Content.None)
        {
            Means = "a column",
            Gives = typeof(TableColumn),
            Attributes =
            [
                new("data-key", Values.Id, "unique in the table, the same from issue to issue") { IsRequired = true },
                new("data-unit", Values.Text, "the unit of its numbers, printed in the head"),
                new("data-align", Values.OneOf(typeof(Align)), "default `left`"),
                new("data-least", Values.Over0, "no narrower than this, in mm"),
                new("data-most", Values.Over0, "no wider than this, in mm"),
                new("data-fixed", Values.Over0, "exactly as wide as this, in mm"),
                new("data-grow", Values.From0, "share in the width that is left over; default 0"),
            ],
            Words =
            [
                new("strong", "the column that the reader came for, in bold"),
                new("key", "repeated on each part when the table is split across its width"),
            ],
        },
        new("thead", null, Content.TablePart, Content.Row)
        {
            Means = "one row of heads, one for each column",
            Gives = typeof(Table),
            Words = [new("off-paper", "the heads stand in the workbook only")],
        },
        new("tbody", null, Content.TablePart, Content.Row) { Means = "the rows", Gives = typeof(RowGroup) },
        new("tfoot", null, Content.TablePart, Content.Row) { Means = "rows kept with the last one", Gives = typeof(Table) },
        new("tr", null, Content.Row, Content.Field)
        {
            Means = "a row",
            Gives = typeof(Row),
            Attributes =
            [
                BlockForms.Id,
                new("data-top", Values.AnyNumber, "in `alongside`: upper edge of what the row tells about, in mm of the drawing"),
                new("data-bottom", Values.AnyNumber, "in `alongside`: lower edge"),
            ],
            Words = RowWords,
        },
        new("th", null, Content.Field, Sentence) { Means = "the head of a column", Gives = typeof(TableColumn) },
        new("td", null, Content.Field, Sentence)
        {
            Means = "a field of a row",
            Gives = typeof(Cell),
            Attributes =
            [
                new("colspan", Values.Whole(1, 100), "how many columns it takes; default 1"),
                new("data-verdict", Values.OneOf(typeof(Verdict)), "how it fared when it was judged; a printed cell says so by itself"),
                new("data-value", Values.Machine, "what the workbook holds in place of the text"),
                new("data-unit", Values.Text, "the unit of a number in `data-value`, when it is not that of the column"),
            ],
        },
    ];
}
