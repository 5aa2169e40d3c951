namespace Advance.Reading.Tables;

/// <summary>A table as it was written, whichever way.</summary>
/// <param name="Headings">The first row; its cells are not blank, but those at its end may be missing.</param>
/// <param name="Rows">The rows below, without blank ones.</param>
/// <param name="CountsCells">Whether the columns of its marks count cells, as in a workbook, and not signs.</param>
internal sealed record Grid(IReadOnlyList<CellNode> Headings, IReadOnlyList<IReadOnlyList<CellNode>> Rows, bool CountsCells)
{
    /// <summary>A cell of a row; where the row is shorter, a blank one where it would stand.</summary>
    public CellNode Cell(IReadOnlyList<CellNode> row, int column)
    {
        if (column < row.Count)
        {
            return row[column];
        }

        var last = row[^1].At;
        return new("", last with { Column = CountsCells ? column + 1 : last.Column + last.Length + 1, Length = 1 });
    }
}
