namespace Advance.Paper.Tree;

/// <summary>A table. Its head is repeated on each page, a row is never split, a group keeps its first two rows together.</summary>
/// <param name="Columns">At least one.</param>
/// <param name="Groups">The rows; a table without groups has one group without a head.</param>
public sealed record Table(IReadOnlyList<TableColumn> Columns, IReadOnlyList<RowGroup> Groups) : Block
{
    /// <summary>Set over the table; its plain text names the table in the workbook. Default nothing.</summary>
    public IReadOnlyList<Inline> Caption { get; init; } = [];

    /// <summary>Rows at the foot, kept with the last row. Default none.</summary>
    public IReadOnlyList<Row> Foot { get; init; } = [];

    /// <summary>What is printed in place of rows when there are none. Default nothing: the head stands alone.</summary>
    public IReadOnlyList<Inline> WhenEmpty { get; init; } = [];

    /// <summary>False leaves out the row of column heads on paper, as for a list of ticks. Default true.</summary>
    public bool ShowsHead { get; init; } = true;
}
