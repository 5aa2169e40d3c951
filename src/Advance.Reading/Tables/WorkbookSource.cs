using Advance.Domain.Facts;
using Advance.Reading.Files;

namespace Advance.Reading.Tables;

/// <summary>The rows of a sheet, quoted with bars between the cells; a mark's line is the row and its column the cell.</summary>
internal sealed class WorkbookSource(string file) : Source(file)
{
    private const string Bar = " | ";

    private readonly Dictionary<int, IReadOnlyList<string>> rows = [];

    /// <inheritdoc/>
    public override Quote? Quote(Mark mark)
    {
        if (!rows.TryGetValue(mark.Line, out var cells))
        {
            return null;
        }

        var index = Math.Min(mark.Column - 1, cells.Count);
        var start = cells.Take(index).Sum(cell => cell.Length + Bar.Length);
        var line = string.Join(Bar, cells);
        return new(line, Math.Min(start, line.Length), index < cells.Count ? Math.Max(1, cells[index].Length) : 1);
    }

    /// <summary>Keeps a row.</summary>
    public void Add(int row, IReadOnlyList<string> cells) => rows[row] = cells;
}
